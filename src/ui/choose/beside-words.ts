import type { Neighbour } from '../../engine/lie/neighbours';
import { formatQuantity } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import type { LengthUnit } from '../../units/unit-names';
import { ballWords } from './table-words';

/** What is farther off than this, m, about a ball's width, is not told. */
const TOLD_M = 0.06;

/** What a ball touches, or else what it lies close to: "frozen to the 4", "2 mm from the cushion". */
export function besideWords(nearestFirst: readonly Neighbour[], unit: LengthUnit): string {
  const frozenTo = nearestFirst.filter(({ isFrozen }) => isFrozen);
  if (frozenTo.length > 0) return `frozen to ${frozenTo.map(nameOf).join(' and ')}`;
  const [nearest] = nearestFirst;
  if (nearest === undefined || nearest.gapM > TOLD_M) return '';
  return `${gapWords(nearest.gapM, unit)} from ${nameOf(nearest)}`;
}

function nameOf({ what }: Neighbour): string {
  return what === 'cushion' ? 'the cushion' : ballWords(what);
}

/** Gaps below this, m, are told finer: a whole millimetre would say that they touch. */
const FINE_M = 0.00095;

function gapWords(gapM: number, unit: LengthUnit): string {
  const { decimals, ...facts } = LENGTH_UNITS[unit];
  const told = gapM < FINE_M ? decimals + 1 : decimals;
  return formatQuantity(lengthInUnit(gapM, unit), { ...facts, decimals: told });
}
