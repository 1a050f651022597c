import type { FoundWay } from './found-way';
import type { KindCounts, PickRule } from './pick-ways';
import type { ToldWay } from './refine-found';
import type { StretchFound } from './stretch-found';
import type { WaysStretch } from './stretches';
import { wayId } from './way-id';
import type { WaysQuestion } from './ways-question';
import type { WaysJob, WaysJobName, WaysJobOf, WaysResultOf } from './ways-work';
import type { NoWay } from './why-none';

/** Jobs that do not hang on each other, in the order in which their results are told. */
export interface WaysRound {
  readonly jobs: readonly WaysJob[];
  /** How many parts and ways there are to look at in all, as far as is known; null: no job is one of them. */
  readonly of: number | null;
}

/** All that a search came to. */
export interface WaysFound {
  readonly ways: readonly ToldWay[];
  /** How many ways were found to go, by whatever stroke. */
  readonly compared: number;
  /** How many of each kind really differ: of these the ways told were picked. */
  readonly differ: KindCounts;
  /** Why there is none of some kinds. */
  readonly none: readonly NoWay[];
}

/** The first ways are told after so many parts, and so many of them. */
const EARLY_PARTS = 6;
const EARLY_WAYS = 3;

type Rounds<R> = Generator<WaysRound, R, readonly unknown[]>;

/**
 * The order of a search for all ways to play a position: rounds of jobs, of which whoever drives it
 * hands back the results, in the order of the jobs. So what comes out hangs on the question alone, by
 * however many hands it is done. Nothing is worked out here, so a page may drive it.
 */
export function* waysInOrder(question: WaysQuestion, rule: PickRule): Rounds<WaysFound> {
  const stretches = yield* one('waysParts', question);
  const worked = new Map<string, ToldWay>();
  const parts: StretchFound[] = [];
  const found = () => parts.flatMap(({ ways }) => ways);
  const pick = (most: number) => one('waysPick', { found: found(), rule: { ...rule, most } });
  const look = function* (some: readonly WaysStretch[], picked: readonly FoundWay[], of: number) {
    const ways = picked.filter((way) => !worked.has(wayId(way)));
    const results = yield* both(question, ways, some, of);
    parts.push(...results.parts);
    for (const [at, way] of ways.entries()) {
      const told = results.told[at];
      if (told !== undefined) worked.set(wayId(way), told);
    }
  };

  let of = stretches.length + rule.most;
  yield* look(stretches.slice(0, EARLY_PARTS), [], of);
  const few = yield* pick(Math.min(EARLY_WAYS, rule.most));
  yield* look(stretches.slice(EARLY_PARTS), few, of);
  const raised = yield* one('waysRaised', { question, parts });
  of += raised.length;
  yield* look(raised, [], of);
  const chosen = yield* pick(rule.most);
  const isWorked = chosen.filter((way) => worked.has(wayId(way))).length;
  of = stretches.length + raised.length + worked.size + chosen.length - isWorked;
  yield* look([], chosen, of);
  const refined = chosen.flatMap((way) => worked.get(wayId(way)) ?? []);
  const ways = yield* one('waysTell', { refined, rule });
  const differ = yield* one('waysCount', { found: found(), rule });
  const none = yield* one('waysNone', { question, parts });
  return { ways, compared: found().length, differ, none };
}

/** A round of one job, which sorts what is there. */
function* one<N extends WaysJobName>(name: N, job: WaysJobOf<N>): Rounds<WaysResultOf<N>> {
  const [result] = yield { jobs: [{ name, job } as WaysJob], of: null };
  return result as WaysResultOf<N>;
}

/** A round that works ways out, which are waited for, and goes on with the search. */
function* both(
  question: WaysQuestion,
  ways: readonly FoundWay[],
  stretches: readonly WaysStretch[],
  of: number,
): Rounds<{ readonly told: readonly ToldWay[]; readonly parts: readonly StretchFound[] }> {
  const jobs: readonly WaysJob[] = [
    ...ways.map((way) => ({ name: 'waysRefine', job: { question, way } }) as const),
    ...stretches.map((stretch) => ({ name: 'waysSearch', job: { question, stretch } }) as const),
  ];
  const results = yield { jobs, of };
  return {
    told: results.slice(0, ways.length) as readonly ToldWay[],
    parts: results.slice(ways.length) as readonly StretchFound[],
  };
}
