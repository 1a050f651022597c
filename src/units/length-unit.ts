import type { UnitFacts } from './unit-facts';
import type { LengthUnit } from './unit-names';

/** Metres in one of each unit; the inch is exact by definition. */
const METRES_IN: Readonly<Record<LengthUnit, number>> = { mm: 0.001, cm: 0.01, in: 0.0254 };

/** Short lengths: sideways figures, tips and balls. */
export const LENGTH_UNITS: Readonly<Record<LengthUnit, UnitFacts>> = {
  mm: {
    symbol: 'mm',
    name: 'millimetres',
    spaced: true,
    fineStep: 1,
    coarseStep: 10,
    decimals: 0,
    leastDecimals: 0,
    eighths: false,
  },
  cm: {
    symbol: 'cm',
    name: 'centimetres',
    spaced: true,
    fineStep: 0.1,
    coarseStep: 1,
    decimals: 1,
    leastDecimals: 1,
    eighths: false,
  },
  in: {
    symbol: 'in',
    name: 'inches',
    spaced: true,
    fineStep: 0.05,
    coarseStep: 0.5,
    decimals: 2,
    leastDecimals: 2,
    eighths: false,
  },
};

/** A length in m, in the given unit. The sign is kept. */
export function lengthInUnit(lengthM: number, unit: LengthUnit): number {
  return lengthM / METRES_IN[unit];
}

/** A length in the given unit, in m. The sign is kept. */
export function lengthInM(length: number, unit: LengthUnit): number {
  return length * METRES_IN[unit];
}
