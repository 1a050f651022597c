import { fitKit } from './fit-kit';
import type { FitShot } from './fit-question';
import { influenceAt, spreadAhead } from './influence';
import { type ReadingReport, readingReports } from './shot-report';
import { predictedReadings, shotResiduals } from './shot-residuals';

/** A shot as it was read, and those that had been read by then. */
export interface ForesightJob {
  readonly earlier: readonly FitShot[];
  readonly shot: FitShot;
}

/**
 * Puts a shot's readings beside what the earlier ones alone led to expect. How far the two may well
 * lie apart counts in what was not known of the kit by then.
 *
 * @param onStep told again and again on the way: many readings take long
 */
export function foresee(
  { earlier, shot }: ForesightJob,
  onStep = () => {},
): readonly ReadingReport[] {
  const fit = fitKit(earlier, [shot.prior.parts], onStep);
  const influence = influenceAt(shotResiduals(shot, fit.layout), fit.unknowns);
  const spread = influence === null ? [] : spreadAhead(influence, fit);
  const expected = predictedReadings(shot, fit.layout, fit.unknowns);
  return readingReports(shot, expected, (row) => Math.sqrt(spread[row]?.[row] ?? 1));
}
