import type { WayKind } from '../goal/goal';
import type { FoundWay } from '../ways/found-way';
import type { StretchFound } from '../ways/stretch-found';
import type { WaysStretch } from '../ways/stretches';
import { wayId } from '../ways/way-id';
import type { WaysQuestion } from '../ways/ways-question';
import type { NoWay } from '../ways/why-none';
import type { PlaysJob, PlaysJobName, PlaysJobOf, PlaysResultOf, PlaysRule } from './plays-work';
import type { FoundSafety, ToldSafety } from './safety';
import type { SafetyStretch } from './search-safety';
import type { Play, WorthyWay } from './worthy-ways';

/** Jobs that do not hang on each other, in the order in which their results are told. */
export interface PlaysRound {
  readonly jobs: readonly PlaysJob[];
  /** How many parts and ways there are to look at in all, as far as is known; null: no job is one of them. */
  readonly of: number | null;
}

/** All that a search came to. */
export interface PlaysFound {
  /** In the order asked for. */
  readonly plays: readonly Play[];
  /** The kinds of all ways that were found to go, by whatever stroke: of these those told were picked. */
  readonly found: readonly WayKind[];
  /** Why there is none of some kinds. */
  readonly none: readonly NoWay[];
}

/** The first ways are told after so many parts, and so many of them. */
const EARLY_PARTS = 6;
const EARLY_WAYS = 3;

type Rounds<R> = Generator<PlaysRound, R, readonly unknown[]>;

/**
 * The order of a search for all ways to play a position: rounds of jobs, of which whoever drives it
 * hands back the results, in the order of the jobs. So what comes out hangs on the question alone, by
 * however many hands it is done. Nothing is worked out here, so a page may drive it.
 */
export function* playsInOrder(question: WaysQuestion, rule: PlaysRule): Rounds<PlaysFound> {
  const stretches = yield* one('waysParts', question);
  const safe = rule.hasSafeties ? yield* one('safetyParts', question) : [];
  const parts: StretchFound[] = [];
  const worked = new Map<string, WorthyWay>();
  const found = () => parts.flatMap(({ ways }) => ways);
  const pick = (most: number) =>
    one('waysPick', { question, found: found(), rule: { ...rule, most } });
  let inAll = stretches.length + safe.length;
  /** Works ways out, which are waited for, and goes on with the search. */
  const look = function* (
    picked: readonly FoundWay[],
    some: readonly WaysStretch[],
    most = rule.most,
  ): Rounds<void> {
    const ways = picked.filter((way) => !worked.has(wayId(way, way.stroke)));
    const jobs: readonly PlaysJob[] = [
      ...ways.map((way) => ({ name: 'waysRefine', job: { question, way } }) as const),
      ...some.map((stretch) => ({ name: 'waysSearch', job: { question, stretch } }) as const),
    ];
    const of = inAll + Math.max(most, worked.size + ways.length);
    const results = yield { jobs, of };
    for (const [at, way] of ways.entries())
      worked.set(wayId(way, way.stroke), results[at] as WorthyWay);
    parts.push(...(results.slice(ways.length) as readonly StretchFound[]));
  };

  yield* look([], stretches.slice(0, EARLY_PARTS));
  yield* look(yield* pick(Math.min(EARLY_WAYS, rule.most)), stretches.slice(EARLY_PARTS));
  const raised = yield* one('waysRaised', { question, parts });
  inAll += raised.length;
  yield* look([], raised);
  const chosen = yield* pick(rule.most);
  yield* look(chosen, [], 0);
  const safeties = yield* safetiesInOrder(question, safe, inAll + worked.size);
  const refined = chosen.flatMap((way) => worked.get(wayId(way, way.stroke)) ?? []);
  return {
    plays: yield* one('playsTell', { refined, safeties, rule }),
    found: found().map(({ goal }) => goal.kind),
    none: yield* one('waysNone', { question, parts }),
  };
}

/** Searches for safeties and works the best of them out. */
function* safetiesInOrder(
  question: WaysQuestion,
  stretches: readonly SafetyStretch[],
  of: number,
): Rounds<readonly ToldSafety[]> {
  if (stretches.length === 0) return [];
  const searched = yield {
    jobs: stretches.map((stretch) => ({ name: 'safetySearch', job: { question, stretch } })),
    of,
  };
  const picked = yield* one('safetyPick', (searched as readonly FoundSafety[][]).flat());
  const told = yield {
    jobs: picked.map((safety) => ({ name: 'safetyRefine', job: { question, safety } })),
    of: of + picked.length,
  };
  return told as readonly ToldSafety[];
}

/** A round of one job, which sorts what is there. */
function* one<N extends PlaysJobName>(name: N, job: PlaysJobOf<N>): Rounds<PlaysResultOf<N>> {
  const [result] = yield { jobs: [{ name, job } as PlaysJob], of: null };
  return result as PlaysResultOf<N>;
}
