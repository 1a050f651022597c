import type { FoundWay } from '../ways/found-way';
import { type PickRule, waysToRefine } from '../ways/pick-ways';
import { raisedStretches } from '../ways/raised-stretches';
import { searchStretch } from '../ways/search-stretch';
import type { StretchFound } from '../ways/stretch-found';
import { type WaysStretch, waysStretches } from '../ways/stretches';
import type { WaysQuestion } from '../ways/ways-question';
import { whyNone } from '../ways/why-none';
import { refineSafety, safetiesToRefine } from './refine-safety';
import type { FoundSafety, ToldSafety } from './safety';
import { type SafetyStretch, safetyStretches, searchSafety } from './search-safety';
import {
  playsToTell,
  refineWorthy,
  type WaysOrder,
  type WorthyWay,
  worthyToRefine,
} from './worthy-ways';

/** What a list of plays is to be like. */
export interface PlaysRule extends PickRule {
  readonly order: WaysOrder;
  /** Whether safeties are looked for too. */
  readonly hasSafeties: boolean;
}

/** A part of a search for all ways to play a position. */
export interface WaysSearchJob {
  readonly question: WaysQuestion;
  readonly stretch: WaysStretch;
}

/** A part of a search for safeties. */
export interface SafetySearchJob {
  readonly question: WaysQuestion;
  readonly stretch: SafetyStretch;
}

/** One way that a search found. */
export interface WaysRefineJob {
  readonly question: WaysQuestion;
  readonly way: FoundWay;
}

/** One safety that a search found. */
export interface SafetyRefineJob {
  readonly question: WaysQuestion;
  readonly safety: FoundSafety;
}

/** All that a search found, and how many of it are wanted. */
export interface WaysPickJob {
  readonly question: WaysQuestion;
  readonly found: readonly FoundWay[];
  readonly rule: PlaysRule;
}

/** All that was worked out, and how many of it are wanted. */
export interface PlaysTellJob {
  readonly refined: readonly WorthyWay[];
  readonly safeties: readonly ToldSafety[];
  readonly rule: PlaysRule;
}

/** Parts of a search that are done. */
export interface WaysPartsJob {
  readonly question: WaysQuestion;
  readonly parts: readonly StretchFound[];
}

/** The work that a search for all ways comes to, each a job by itself: what goes in and out is plain data. */
export const PLAYS_WORK = {
  waysParts: (question: WaysQuestion) => waysStretches(question),
  waysSearch: ({ question, stretch }: WaysSearchJob) => searchStretch(question, stretch),
  /** What is looked at besides, with a raised cue. */
  waysRaised: ({ question, parts }: WaysPartsJob) => raisedStretches(question, parts),
  waysPick: ({ question, found, rule }: WaysPickJob) =>
    rule.order === 'worth' ? worthyToRefine(question, found, rule) : waysToRefine(found, rule),
  waysRefine: ({ question, way }: WaysRefineJob) => refineWorthy(question, way),
  safetyParts: (question: WaysQuestion) => safetyStretches(question),
  safetySearch: ({ question, stretch }: SafetySearchJob) => searchSafety(question, stretch),
  safetyPick: (found: readonly FoundSafety[]) => safetiesToRefine(found),
  safetyRefine: ({ question, safety }: SafetyRefineJob) => refineSafety(question, safety),
  playsTell: ({ refined, safeties, rule }: PlaysTellJob) =>
    playsToTell(refined, safeties, rule, rule.order),
  waysNone: ({ question, parts }: WaysPartsJob) => whyNone(question, parts),
};

type PlaysWork = typeof PLAYS_WORK;
type JobName = keyof PlaysWork;
export type PlaysJobOf<N extends JobName> = Parameters<PlaysWork[N]>[0];
export type PlaysResultOf<N extends JobName> = ReturnType<PlaysWork[N]>;
/** One job of a search. */
export type PlaysJob = {
  [N in JobName]: { readonly name: N; readonly job: PlaysJobOf<N> };
}[JobName];
export type { JobName as PlaysJobName };

/** Does one job, here and now. */
export function doPlaysJob({ name, job }: PlaysJob): PlaysResultOf<JobName> {
  const work = PLAYS_WORK[name] as (job: PlaysJobOf<JobName>) => PlaysResultOf<JobName>;
  return work(job);
}
