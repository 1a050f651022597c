import type { UnitFacts } from './unit-facts';
import type { SpeedUnit } from './unit-names';

/** Metres a second in one of each unit; the mile is 1609.344 m by definition. */
const MPS_IN: Readonly<Record<SpeedUnit, number>> = {
  mps: 1,
  kmh: 1000 / 3600,
  mph: 1609.344 / 3600,
};

export const SPEED_UNITS: Readonly<Record<SpeedUnit, UnitFacts>> = {
  mps: {
    symbol: 'm/s',
    name: 'metres a second',
    spaced: true,
    fineStep: 0.1,
    coarseStep: 0.5,
    decimals: 2,
    leastDecimals: 1,
    eighths: false,
  },
  kmh: {
    symbol: 'km/h',
    name: 'kilometres an hour',
    spaced: true,
    fineStep: 0.5,
    coarseStep: 2,
    decimals: 1,
    leastDecimals: 1,
    eighths: false,
  },
  mph: {
    symbol: 'mph',
    name: 'miles an hour',
    spaced: true,
    fineStep: 0.2,
    coarseStep: 1,
    decimals: 1,
    leastDecimals: 1,
    eighths: false,
  },
};

/** A speed in m/s, in the given unit. */
export function speedInUnit(speedMps: number, unit: SpeedUnit): number {
  return speedMps / MPS_IN[unit];
}

/** A speed in the given unit, in m/s. */
export function speedInMps(speed: number, unit: SpeedUnit): number {
  return speed * MPS_IN[unit];
}
