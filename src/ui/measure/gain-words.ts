import type { ToGo } from '../../engine/fit/fit-report';
import type { AimGain } from '../../state/measure/aim-gain';
import { directionWord } from '../../units/direction-word';
import { DISTANCE_UNITS } from '../../units/distance-unit';
import { formatNumber, formatQuantity } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import { spreadFigure } from '../../units/plus-minus';
import type { LengthUnit } from '../../units/unit-names';
import { quantityName } from './trial-words';

/** What readings did to an aim, in the parts in which it is told. */
export interface GainWords {
  /** "3 mm left of before". */
  readonly shift: string;
  /** "now ±5 mm, was ±11". */
  readonly sureness: string;
  /** "good enough for 4 diamonds". */
  readonly enough: string;
}

export function gainWords(gain: AimGain, unit: LengthUnit, tableLengthM: number): GainWords {
  const facts = LENGTH_UNITS[unit];
  const size = (metres: number) => formatNumber(lengthInUnit(Math.abs(metres), unit), facts);
  const sd = (metres: number) => spreadFigure(lengthInUnit(metres, unit), facts);
  const shift = size(gain.shiftM);
  return {
    shift:
      Number(shift) === 0
        ? 'Where it was'
        : `${shift} ${facts.symbol} ${directionWord(gain.shiftM)} of before`,
    sureness: `now ${sd(gain.nowSdM)} ${facts.symbol}, was ${sd(gain.beforeSdM)}`,
    enough: enoughWords(gain.enoughM, tableLengthM),
  };
}

/** Half diamonds: more is not known of it. */
const STEPS = 2;

function enoughWords(enoughM: number, tableLengthM: number): string {
  if (enoughM >= tableLengthM) return 'good enough the length of the table';
  const diamonds = Math.floor((enoughM / tableLengthM) * 8 * STEPS) / STEPS;
  if (diamonds === 0) return 'not good enough for half a diamond yet';
  return `good enough for ${formatQuantity(diamonds, DISTANCE_UNITS.diamonds)}`;
}

/**
 * How many more shots until the aim of the shot on Shot is good enough, and what the next is for.
 * @param before how many it was before the last shot; left out where that is not known
 */
export function toGoWords({ shots, first }: ToGo, before?: number | null | undefined): string {
  if (shots === 0) return '✓ Good enough for the shot you have.';
  const isAsBefore = before !== undefined && left(before) <= left(shots);
  const why = isAsBefore ? ' As before: this helped little.' : '';
  const next = first ? ` The next is for ${quantityName(first.teaches)}.` : '';
  return `About ${shots ?? '12 or'} more ${shots === 1 ? 'shot' : 'shots'} until good enough for the shot you have.${why}${next}`;
}

function left(shots: number | null): number {
  return shots ?? Number.POSITIVE_INFINITY;
}

/** Of a kit that nobody has measured: that the shot on Shot forgives that, and from how far it would not. */
export function forgivenWords(enoughM: number, tableLengthM: number): string {
  const forgives = 'Unmeasured, and the shot you have forgives it';
  if (enoughM >= tableLengthM) return `${forgives}, however far apart the balls lie.`;
  const diamonds = Math.ceil((enoughM / tableLengthM) * 8 * STEPS) / STEPS;
  return `${forgives}; from ${formatQuantity(diamonds, DISTANCE_UNITS.diamonds)} on it would not.`;
}

/** What good enough means, said once. */
export const ENOUGH_NOTE = 'Within what the pocket forgives, two times in three.';
