import type { ReadingName } from '../../engine/fit/trials/trial';
import type { Preferences } from '../../store/records';
import { type RunTable, runInDiamonds, runInM } from '../../units/run-in-diamonds';
import { tapeInM, tapeInUnit } from '../../units/tape-unit';
import type { EntryUnit, EntryWord, KeypadDraft } from './keypad-draft';

/** What is entered on a keypad: a reading, the way a coasting ball went, or the butt's height. */
export type EntryName = ReadingName | 'distance' | 'butt';

/** The two ways a reading can go; the first is −. */
export type EntryWays = readonly ['left', 'right'] | readonly ['back', 'on'];

export interface EntrySpec {
  /** Those that may be chosen, the usual first. */
  readonly units: readonly EntryUnit[];
  /** Null where it goes one way only. */
  readonly ways: EntryWays | null;
}

const SHORT = ['cm', 'mm', 'in'] as const;
const LONG = ['m', 'cm', 'in', 'diamonds'] as const;
const ASIDE: EntrySpec = { units: [...SHORT, 'diamonds'], ways: ['left', 'right'] };

export const ENTRY_SPECS: Readonly<Record<EntryName, EntrySpec>> = {
  landingM: ASIDE,
  objectLandingM: ASIDE,
  timeS: { units: ['s'], ways: null },
  cueBallM: { units: SHORT, ways: ['back', 'on'] },
  objectBallM: { units: [...SHORT, 'diamonds'], ways: null },
  bridgeM: { units: SHORT, ways: null },
  runM: { units: ['diamonds', 'm', 'in'], ways: null },
  upM: { units: ['diamonds', 'm', 'in'], ways: null },
  distance: { units: LONG, ways: null },
  butt: { units: SHORT, ways: null },
};

/** The unit a keypad opens in: the last one chosen where it fits, else what the player likes. */
export function openingUnit(
  name: EntryName,
  last: EntryUnit | null,
  { lengthUnit }: Preferences,
): EntryUnit {
  const { units } = ENTRY_SPECS[name];
  const wanted: readonly (EntryUnit | null)[] = [
    last,
    lengthUnit === 'in' ? 'in' : null,
    units[0] ?? 'cm',
  ];
  return (
    units.find((unit) => unit === wanted.find((one) => one !== null && units.includes(one))) ?? 'cm'
  );
}

/** A figure of an entry in SI units. */
export function entryInSi(name: EntryName, value: number, unit: EntryUnit, table: RunTable) {
  if (unit === 's') return value;
  if (name === 'runM' && unit === 'diamonds') return runInM(value, table);
  return tapeInM(value, unit, table.bedLengthM);
}

/** A value in SI units as it would stand on the keypad. */
export function entryDraft(
  name: EntryName,
  value: number,
  unit: EntryUnit,
  table: RunTable,
): KeypadDraft {
  const size = Math.abs(inUnit(name, value, unit, table));
  const figure = `${Number(size.toFixed(DECIMALS[unit]))}`;
  return { figure, unit, word: wayOf(name, value), isWhole: true };
}

const DECIMALS: Readonly<Record<EntryUnit, number>> = {
  mm: 0,
  cm: 1,
  in: 2,
  m: 2,
  diamonds: 2,
  s: 2,
};

function inUnit(name: EntryName, value: number, unit: EntryUnit, table: RunTable): number {
  if (unit === 's') return value;
  if (name === 'runM' && unit === 'diamonds') return runInDiamonds(value, table);
  return tapeInUnit(value, unit, table.bedLengthM);
}

/** The word for the way a value goes; none for nothing, or where there is but one. */
export function wayOf(name: EntryName, value: number): EntryWord {
  const { ways } = ENTRY_SPECS[name];
  if (!ways || value === 0) return '';
  return value < 0 ? ways[0] : ways[1];
}
