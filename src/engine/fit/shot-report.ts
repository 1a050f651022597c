import type { Fit, FittedShot } from './fit-kit';
import type { FitShot } from './fit-question';
import { readingCovariance } from './shot-evidence';
import { predictedReadings } from './shot-residuals';
import type { ReadingName, ReadingSpec, Readings } from './trials/trial';
import { TRIALS } from './trials/trials';

/** A reading beside what the fit expects of a stroke exactly as meant; both in the reading's unit. */
export interface ReadingReport {
  readonly name: ReadingName;
  readonly read: number;
  /** Null where the estimated kit would leave nothing to read. */
  readonly expected: number | null;
  /** How far the two may well lie apart: the stroke's scatter and the reading's error together. */
  readonly sd: number;
}

/** What became of a shot in the fit. */
export interface ShotReport {
  readonly id: string;
  readonly readings: readonly ReadingReport[];
  /** How likely it is that nothing went wrong, 0 to 1. */
  readonly goodShare: number;
  /** It looks like a slip, and hardly counts: for the player to look at, and to strike out. */
  readonly isDoubtful: boolean;
}

/** Rather botched than not. */
const DOUBTFUL = 0.5;

/** Puts a fitted shot beside its expectation. */
export function shotReport({ asked, evidence, verdict }: FittedShot, fit: Fit): ShotReport {
  const expected = predictedReadings(asked, fit.layout, fit.unknowns);
  const covariance = evidence === null ? [] : readingCovariance(evidence.perStray);
  return {
    id: asked.id,
    readings: readingReports(
      asked,
      expected,
      (row) => Math.sqrt(covariance[row]?.[row] ?? 1) * fit.stretch,
    ),
    goodShare: verdict.goodShare,
    isDoubtful: verdict.goodShare < DOUBTFUL,
  };
}

/**
 * Puts what was read beside what was expected.
 * @param widthOf how far they may well lie apart, by the place among what was read; in errors of the
 *   reading itself
 */
export function readingReports(
  { shot, readings }: FitShot,
  expected: Readings | null,
  widthOf: (row: number) => number,
): readonly ReadingReport[] {
  const taken = TRIALS[shot.trial].readings.flatMap((spec) => {
    const read = readings[spec.name];
    return read === undefined ? [] : [{ spec, read }];
  });
  return taken.map(({ spec, read }, row) => ({
    name: spec.name,
    read,
    expected: expected?.[spec.name] ?? null,
    sd: readSd(spec, read) * widthOf(row),
  }));
}

function readSd({ sd, isShare }: ReadingSpec, read: number): number {
  return isShare ? sd * Math.abs(read) : sd;
}
