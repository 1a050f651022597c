import { DIAMONDS_ALONG } from '../engine/table/diamonds';
import { DISTANCE_UNITS } from './distance-unit';
import { LENGTH_UNITS, lengthInM, lengthInUnit } from './length-unit';
import type { UnitFacts } from './unit-facts';

/** What is read off a table: by tape, or by the sights on its rails. */
export type TapeUnit = 'mm' | 'cm' | 'in' | 'm' | 'diamonds';

export const TAPE_UNITS: Readonly<Record<TapeUnit, UnitFacts>> = {
  ...LENGTH_UNITS,
  m: DISTANCE_UNITS.m,
  diamonds: { ...DISTANCE_UNITS.diamonds, eighths: false },
};

/**
 * A length in m, in the given unit. The sign is kept.
 * @param bedLengthM nose to nose, of the table it was read on
 */
export function tapeInUnit(lengthM: number, unit: TapeUnit, bedLengthM: number): number {
  if (unit === 'm') return lengthM;
  if (unit === 'diamonds') return lengthM / (bedLengthM / DIAMONDS_ALONG);
  return lengthInUnit(lengthM, unit);
}

/** A length in the given unit, in m. The sign is kept. */
export function tapeInM(length: number, unit: TapeUnit, bedLengthM: number): number {
  if (unit === 'm') return length;
  if (unit === 'diamonds') return length * (bedLengthM / DIAMONDS_ALONG);
  return lengthInM(length, unit);
}
