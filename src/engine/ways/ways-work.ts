import type { FoundWay } from './found-way';
import { type PickRule, waysToRefine, waysToTell } from './pick-ways';
import { raisedStretches } from './raised-stretches';
import { refineFound, type ToldWay } from './refine-found';
import { searchStretch } from './search-stretch';
import type { StretchFound } from './stretch-found';
import { type WaysStretch, waysStretches } from './stretches';
import type { WaysQuestion } from './ways-question';
import { whyNone } from './why-none';

/** A part of a search for all ways to play a position. */
export interface WaysSearchJob {
  readonly question: WaysQuestion;
  readonly stretch: WaysStretch;
}

/** One way that a search found. */
export interface WaysRefineJob {
  readonly question: WaysQuestion;
  readonly way: FoundWay;
}

/** All that a search found, and how many of it are wanted. */
export interface WaysPickJob {
  readonly found: readonly FoundWay[];
  readonly rule: PickRule;
}

/** All that was worked out, and how many of it are wanted. */
export interface WaysTellJob {
  readonly refined: readonly ToldWay[];
  readonly rule: PickRule;
}

/** Parts of a search that are done. */
export interface WaysPartsJob {
  readonly question: WaysQuestion;
  readonly parts: readonly StretchFound[];
}

/** The work that a search for all ways comes to, each a job by itself: what goes in and out is plain data. */
export const WAYS_WORK = {
  waysParts: (question: WaysQuestion) => waysStretches(question),
  waysSearch: ({ question, stretch }: WaysSearchJob) => searchStretch(question, stretch),
  /** What is looked at besides, with a raised cue. */
  waysRaised: ({ question, parts }: WaysPartsJob) => raisedStretches(question, parts),
  waysPick: ({ found, rule }: WaysPickJob) => waysToRefine(found, rule),
  waysRefine: ({ question, way }: WaysRefineJob) => refineFound(question, way),
  waysTell: ({ refined, rule }: WaysTellJob) => waysToTell(refined, rule),
  waysNone: ({ question, parts }: WaysPartsJob) => whyNone(question, parts),
};

type WaysWork = typeof WAYS_WORK;
type JobName = keyof WaysWork;
export type WaysJobOf<N extends JobName> = Parameters<WaysWork[N]>[0];
export type WaysResultOf<N extends JobName> = ReturnType<WaysWork[N]>;
/** One job of a search. */
export type WaysJob = { [N in JobName]: { readonly name: N; readonly job: WaysJobOf<N> } }[JobName];
export type { JobName as WaysJobName };

/** Does one job, here and now. */
export function doWaysJob({ name, job }: WaysJob): WaysResultOf<JobName> {
  const work = WAYS_WORK[name] as (job: WaysJobOf<JobName>) => WaysResultOf<JobName>;
  return work(job);
}
