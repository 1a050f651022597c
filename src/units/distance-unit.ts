import { DIAMONDS_ALONG } from '../engine/table/diamonds';
import type { UnitFacts } from './unit-facts';
import type { DistanceUnit } from './unit-names';

export const DISTANCE_UNITS: Readonly<Record<DistanceUnit, UnitFacts>> = {
  m: {
    symbol: 'm',
    name: 'metres',
    spaced: true,
    fineStep: 0.01,
    coarseStep: 0.1,
    decimals: 2,
    leastDecimals: 2,
    eighths: false,
  },
  cm: {
    symbol: 'cm',
    name: 'centimetres',
    spaced: true,
    fineStep: 1,
    coarseStep: 10,
    decimals: 1,
    leastDecimals: 0,
    eighths: false,
  },
  ft: {
    symbol: 'ft',
    name: 'feet',
    spaced: true,
    fineStep: 0.05,
    coarseStep: 0.5,
    decimals: 2,
    leastDecimals: 0,
    eighths: false,
  },
  in: {
    symbol: 'in',
    name: 'inches',
    spaced: true,
    fineStep: 0.5,
    coarseStep: 5,
    decimals: 1,
    leastDecimals: 0,
    eighths: false,
  },
  diamonds: {
    symbol: 'diamonds',
    symbolOfOne: 'diamond',
    name: 'diamonds of this table',
    spaced: true,
    fineStep: 0.125,
    coarseStep: 0.5,
    decimals: 2,
    leastDecimals: 0,
    eighths: true,
  },
  'table-lengths': {
    symbol: 'tables',
    symbolOfOne: 'table',
    name: 'lengths of this table',
    spaced: true,
    fineStep: 0.02,
    coarseStep: 0.125,
    decimals: 2,
    leastDecimals: 0,
    eighths: true,
  },
};

/**
 * A distance in m, in the given unit.
 * @param tableLengthM nose to nose, of the table in play.
 */
export function distanceInUnit(
  distanceM: number,
  unit: DistanceUnit,
  tableLengthM: number,
): number {
  return distanceM / metresIn(unit, tableLengthM);
}

/**
 * A distance in the given unit, in m.
 * @param tableLengthM nose to nose, of the table in play.
 */
export function distanceInM(distance: number, unit: DistanceUnit, tableLengthM: number): number {
  return distance * metresIn(unit, tableLengthM);
}

function metresIn(unit: DistanceUnit, tableLengthM: number): number {
  switch (unit) {
    case 'm':
      return 1;
    case 'cm':
      return 0.01;
    case 'ft':
      return 0.3048;
    case 'in':
      return 0.0254;
    case 'diamonds':
      return tableLengthM / DIAMONDS_ALONG;
    case 'table-lengths':
      return tableLengthM;
  }
}
