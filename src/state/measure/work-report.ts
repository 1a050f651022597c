import { type FitShot, type KitPrior, MOST_SHOTS } from '../../engine/fit/fit-question';
import type { FitJob, FitReport } from '../../engine/fit/fit-report';
import type { ForesightJob } from '../../engine/fit/foresee';
import type { ReadingReport } from '../../engine/fit/shot-report';
import { shotsToDo } from '../../engine/fit/trials/trials';
import { findPriors, type PriorSources, type WorkOut } from './find-priors';
import type { MeasureQuestion } from './measure-question';
import { measuredShot, scatterOf } from './measured-shot';
import { kitPriorOf } from './part-prior';
import { type Played, type PlayedAttempt, sharePart, trialBedOf } from './parts-played';

/** Works out what was to be expected of a shot. */
export type Foresee = (job: ForesightJob) => Promise<readonly ReadingReport[]>;

/** What readings are taken for. */
export type ServedAims = Pick<FitJob, 'aims'> & Required<Pick<FitJob, 'goal'>>;

/** A report, and what was known before of the kit that it tells of. */
export interface WorkedReport {
  readonly question: MeasureQuestion;
  readonly served: ServedAims;
  readonly prior: KitPrior;
  readonly report: FitReport;
}

/**
 * Works out the report of the kit in play, from the newest attempts that share a part with it.
 * @param served shots as the player plays them, and the one that is to be sure enough
 */
export async function workReport(
  question: MeasureQuestion,
  served: ServedAims,
  workOut: WorkOut,
): Promise<WorkedReport> {
  const { inPlay, shelves, attempts, profile } = question;
  const scatter = scatterOf(profile);
  const sources = { shelves, attempts, scatter, workOut };
  const shots = await shotsWith(inPlay, sources);
  const prior = kitPriorOf(inPlay, await findPriors(inPlay, sources));
  const candidates = shotsToDo(trialBedOf(inPlay.records));
  const report = await workOut({ shots, prior, scatter, ...served, candidates });
  return { question, served, prior, report };
}

/**
 * Puts an attempt beside what those begun before it led to expect.
 * @returns null where it tells nothing of the kit in play
 */
export async function workForesight(
  { shelves, attempts, profile }: MeasureQuestion,
  id: string,
  workOut: WorkOut,
  foresee: Foresee,
): Promise<readonly ReadingReport[] | null> {
  const place = attempts.findIndex(({ attempt }) => attempt.id === id);
  const played = attempts[place];
  if (played === undefined) return null;
  const earlier = attempts.slice(0, place);
  const sources = { shelves, attempts: earlier, scatter: scatterOf(profile), workOut };
  return await foresee({
    earlier: await shotsWith(played, sources),
    shot: await shotOf(played, sources),
  });
}

/** The shots that share a part with something that was played. */
async function shotsWith(played: Played, sources: PriorSources): Promise<readonly FitShot[]> {
  const sharing = sources.attempts.filter((one) => sharePart(one, played)).slice(-MOST_SHOTS);
  const shots = [];
  for (const one of sharing) shots.push(await shotOf(one, sources));
  return shots;
}

async function shotOf(played: PlayedAttempt, sources: PriorSources): Promise<FitShot> {
  const prior = kitPriorOf(played, await findPriors(played, sources));
  return measuredShot(played.attempt, prior, sources.scatter);
}
