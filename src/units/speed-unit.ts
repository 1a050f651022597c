import type { RunBed, TableRuns } from './table-run';
import type { UnitFacts } from './unit-facts';
import type { SpeedUnit } from './unit-names';

/** Metres a second in one of each unit; the mile is 1609.344 m by definition. */
const MPS_IN: Readonly<Record<Exclude<SpeedUnit, 'lengths'>, number>> = {
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
  lengths: {
    symbol: 'lengths',
    name: 'table lengths a rolling ball runs',
    spaced: true,
    fineStep: 0.1,
    coarseStep: 0.5,
    decimals: 1,
    leastDecimals: 1,
    eighths: false,
  },
};

/** A unit of speed on one table: its facts, and there and back. */
export interface SpeedScale {
  readonly unit: SpeedUnit;
  readonly facts: UnitFacts;
  /** A speed in m/s, in the unit. The larger the speed, the larger the figure. */
  inUnit(speedMps: number): number;
  /** A figure in the unit, in m/s. */
  inMps(figure: number): number;
}

/**
 * @param bed what `lengths` are told on
 * @param runs how far speeds run on it; null: not known yet, so that `lengths` are told as m/s
 */
export function speedScale(
  unit: SpeedUnit,
  bed: RunBed,
  runs: TableRuns | null = null,
): SpeedScale {
  if (unit === 'lengths') return runs ? lengthsScale(bed, runs) : speedScale('mps', bed);
  const mps = MPS_IN[unit];
  return {
    unit,
    facts: SPEED_UNITS[unit],
    inUnit: (speedMps) => speedMps / mps,
    inMps: (figure) => figure * mps,
  };
}

function lengthsScale(bed: RunBed, { lengthsRun, speedOfRun }: TableRuns): SpeedScale {
  return {
    unit: 'lengths',
    facts: SPEED_UNITS.lengths,
    inUnit: (speedMps) => lengthsRun(speedMps, bed),
    inMps: (figure) => speedOfRun(figure, bed),
  };
}
