import type { UnitFacts } from './unit-facts';
import type { LengthUnit } from './unit-names';

/** A slope of the bed as it is told, and the figure told for one m/m. */
interface SlopeUnit {
  readonly facts: UnitFacts;
  readonly perSi: number;
}

const PER_METRE: SlopeUnit = {
  facts: {
    symbol: 'mm per m',
    name: 'millimetres a metre',
    spaced: true,
    fineStep: 0.1,
    coarseStep: 1,
    decimals: 2,
    leastDecimals: 0,
    eighths: false,
  },
  perSi: 1000,
};

/** A nine-foot bed is a hundred inches long. */
const PER_HUNDRED_INCHES: SlopeUnit = {
  facts: {
    ...PER_METRE.facts,
    symbol: 'in per 100 in',
    name: 'inches in a hundred',
    fineStep: 0.01,
    coarseStep: 0.1,
    decimals: 3,
  },
  perSi: 100,
};

/** By the unit of sideways figures. */
export const SLOPE_UNITS: Readonly<Record<LengthUnit, SlopeUnit>> = {
  mm: PER_METRE,
  cm: PER_METRE,
  in: PER_HUNDRED_INCHES,
};
