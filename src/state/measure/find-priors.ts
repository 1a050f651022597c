import { MOST_SHOTS, type StrokeScatter } from '../../engine/fit/fit-question';
import type { FitJob, FitReport } from '../../engine/fit/fit-report';
import type { ShelfContents } from '../../store/contents';
import { PART_OF } from '../../store/kit-fields';
import type { ShelfName, Shelves } from '../../store/records';
import { measuredShot } from './measured-shot';
import {
  alike,
  kitPriorOf,
  measuredPrior,
  OWN_PRIORS,
  type PartPrior,
  type PartPriors,
} from './part-prior';
import { type Played, type PlayedAttempt, partName } from './parts-played';

/** Works out what readings tell. */
export type WorkOut = (job: FitJob) => Promise<FitReport>;

/** What there is to find priors in. */
export interface PriorSources {
  readonly shelves: ShelfContents;
  /** All that count, of whatever kit. */
  readonly attempts: readonly PlayedAttempt[];
  readonly scatter: StrokeScatter;
  readonly workOut: WorkOut;
}

/** A record in one of its eras. */
interface Era<S extends ShelfName> {
  readonly shelf: S;
  readonly record: Shelves[S];
  readonly era: number;
}

/**
 * The priors of what something was played with. A record that was changed starts from what was
 * measured of it before; one that is like another, from what was measured of that. Where nothing
 * was, it starts from its own numbers.
 */
export async function findPriors(played: Played, sources: PriorSources): Promise<PartPriors> {
  const { records, eras } = played;
  const find = async <S extends ShelfName>(shelf: S): Promise<PartPrior<S>> => {
    const asked: Era<S> = { shelf, record: records[shelf], era: eras[shelf] };
    return (await borrowed(asked, sources, [])) ?? OWN_PRIORS[shelf];
  };
  // One after the other: whoever works them out has one pair of hands.
  const cues = await find('cues');
  const cloths = await find('cloths');
  const balls = await find('balls');
  const tables = await find('tables');
  return { cues, cloths, balls, tables };
}

/** The prior that comes from another era or record; null where none of those was measured. */
async function borrowed<S extends ShelfName>(
  era: Era<S>,
  sources: PriorSources,
  trail: readonly string[],
): Promise<PartPrior<S> | null> {
  const name = partName(era.record.id, era.era);
  const source = sourceOf(era, sources.shelves);
  // Records may lead in a ring: whoever comes back to where it was borrows nothing more.
  if (source === null || trail.includes(partName(source.record.id, source.era))) return null;
  const known = await measured(source, sources, [...trail, name]);
  return known && alike(known);
}

/** What a record in one of its eras starts from, if from anything. */
function sourceOf<S extends ShelfName>(
  { shelf, record, era }: Era<S>,
  shelves: ShelfContents,
): Era<S> | null {
  if (era > 0) return { shelf, record, era: era - 1 };
  const like: Shelves[S] | undefined = shelves[shelf].find(({ id }) => id === record.like);
  return like === undefined ? null : { shelf, record: like, era: like.changes.length };
}

/** What is known of a record in one of its eras; null where nothing was ever measured. */
async function measured<S extends ShelfName>(
  { shelf, record, era }: Era<S>,
  sources: PriorSources,
  trail: readonly string[],
): Promise<PartPrior<S> | null> {
  const start = await borrowed({ shelf, record, era }, sources, trail);
  const name = partName(record.id, era);
  const readOnIt = sources.attempts
    .filter(({ parts }) => parts[PART_OF[shelf]] === name)
    .slice(-MOST_SHOTS);
  const [first] = readOnIt;
  if (first === undefined) return start;
  const priors: PartPriors = start === null ? OWN_PRIORS : { ...OWN_PRIORS, [shelf]: start };
  const { scatter, workOut } = sources;
  const report = await workOut({
    shots: readOnIt.map((played) =>
      measuredShot(played.attempt, kitPriorOf(played, priors), scatter),
    ),
    prior: kitPriorOf(first, priors),
    scatter,
    aims: [],
    candidates: [],
  });
  return measuredPrior(shelf, report.knowledge, first.records.balls);
}
