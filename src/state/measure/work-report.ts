import type { Shot } from '../../engine/aim/shot';
import type { KitPrior } from '../../engine/fit/fit-question';
import type { FitReport } from '../../engine/fit/fit-report';
import { shotsToDo } from '../../engine/fit/shots-to-do';
import { findPriors, type WorkOut } from './find-priors';
import type { MeasureQuestion } from './measure-question';
import { measuredShot, scatterOf } from './measured-shot';
import { kitPriorOf } from './part-prior';
import { sharePart } from './parts-played';
import { trialBedOf } from './trial-bed';

/** A report, and what was known before of the kit that it tells of. */
export interface WorkedReport {
  readonly question: MeasureQuestion;
  readonly prior: KitPrior;
  readonly report: FitReport;
}

/**
 * Works out the report of the kit in play, from every attempt that shares a part with it.
 * @param aims shots as the player plays them
 */
export async function workReport(
  question: MeasureQuestion,
  aims: readonly Shot[],
  workOut: WorkOut,
): Promise<WorkedReport> {
  const { inPlay, shelves, attempts, profile } = question;
  const scatter = scatterOf(profile);
  const sources = { shelves, attempts, scatter, workOut };
  const shots = [];
  for (const played of attempts.filter((one) => sharePart(one, inPlay))) {
    const prior = kitPriorOf(played, await findPriors(played, sources));
    shots.push(measuredShot(played.attempt, prior, scatter));
  }
  const prior = kitPriorOf(inPlay, await findPriors(inPlay, sources));
  const candidates = shotsToDo(trialBedOf(inPlay.records));
  const report = await workOut({ shots, prior, scatter, aims, candidates });
  return { question, prior, report };
}
