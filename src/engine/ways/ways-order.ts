import type { WayKind } from '../goal/goal';
import type { FoundWay } from './found-way';
import type { PickRule } from './pick-ways';
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
  /** The kinds of all ways that were found to go, by whatever stroke: of these those told were picked. */
  readonly found: readonly WayKind[];
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
  const parts: StretchFound[] = [];
  const worked = new Map<string, ToldWay>();
  const found = () => parts.flatMap(({ ways }) => ways);
  const pick = (most: number) => one('waysPick', { found: found(), rule: { ...rule, most } });
  let inAll = stretches.length;
  /** Works ways out, which are waited for, and goes on with the search. */
  const look = function* (
    picked: readonly FoundWay[],
    some: readonly WaysStretch[],
    most = rule.most,
  ): Rounds<void> {
    const ways = picked.filter((way) => !worked.has(wayId(way, way.stroke)));
    const jobs: readonly WaysJob[] = [
      ...ways.map((way) => ({ name: 'waysRefine', job: { question, way } }) as const),
      ...some.map((stretch) => ({ name: 'waysSearch', job: { question, stretch } }) as const),
    ];
    const of = inAll + Math.max(most, worked.size + ways.length);
    const results = yield { jobs, of };
    for (const [at, way] of ways.entries())
      worked.set(wayId(way, way.stroke), results[at] as ToldWay);
    parts.push(...(results.slice(ways.length) as readonly StretchFound[]));
  };

  yield* look([], stretches.slice(0, EARLY_PARTS));
  yield* look(yield* pick(Math.min(EARLY_WAYS, rule.most)), stretches.slice(EARLY_PARTS));
  const raised = yield* one('waysRaised', { question, parts });
  inAll += raised.length;
  yield* look([], raised);
  const chosen = yield* pick(rule.most);
  yield* look(chosen, [], 0);
  const refined = chosen.flatMap((way) => worked.get(wayId(way, way.stroke)) ?? []);
  return {
    ways: yield* one('waysTell', { refined, rule }),
    found: found().map(({ goal }) => goal.kind),
    none: yield* one('waysNone', { question, parts }),
  };
}

/** A round of one job, which sorts what is there. */
function* one<N extends WaysJobName>(name: N, job: WaysJobOf<N>): Rounds<WaysResultOf<N>> {
  const [result] = yield { jobs: [{ name, job } as WaysJob], of: null };
  return result as WaysResultOf<N>;
}
