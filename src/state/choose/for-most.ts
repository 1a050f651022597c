import type { KitSpread } from '../../engine/kit/kit-spread';
import type { RankedWay } from '../../engine/plan/ranked-way';
import type { RankQuestion } from '../../engine/plan/refine-way';
import { worthOf } from '../../engine/plan/worth-of';
import type { Work } from '../../worker/engine-pool';
import { ANYBODY } from '../player/rough-stroke';

/** Two ways of which one goes more often for whoever plays, by more or less than for most. */
export interface Difference {
  readonly better: RankedWay;
  readonly other: RankedWay;
  /** By how much more of all strokes the better one goes, for whoever plays and for most. */
  readonly forPlayer: number;
  readonly forMost: number;
}

/** Beyond the first few a player looks at none. */
const LOOKED_AT = 3;
/** Less than this of all strokes nobody would choose by. */
const TELLING = 0.03;
/** How much further apart, or nearer, than for most. */
const UNLIKE_MOST = 0.05;

/** The same question, of somebody in the middle of all players. */
export function askedForMost(asked: RankQuestion, spread: KitSpread): RankQuestion {
  return { ...asked, question: { ...asked.question, profile: ANYBODY, spread } };
}

/** Where the first ways differ for whoever plays as they do not for most; null where nowhere. */
export async function differenceFor(
  forMost: RankQuestion,
  ways: readonly RankedWay[],
  work: Work,
  signal: AbortSignal,
): Promise<Difference | null> {
  const first = ways.slice(0, LOOKED_AT);
  const most = await Promise.all(
    first.map(({ option }) => work('refine', { asked: forMost, option }, signal)),
  );
  const shares = first.map((way, at) => ({ way, mine: worthOf(way), most: shareOf(most[at]) }));
  const pairs = shares.flatMap((one, at) =>
    shares.slice(at + 1).map((two): Difference => {
      const [better, other] = one.mine >= two.mine ? [one, two] : [two, one];
      const forPlayer = better.mine - other.mine;
      return { better: better.way, other: other.way, forPlayer, forMost: better.most - other.most };
    }),
  );
  const unlike = ({ forPlayer, forMost }: Difference) => Math.abs(forPlayer - forMost);
  const [widest] = pairs
    .filter((pair) => pair.forPlayer >= TELLING && unlike(pair) >= UNLIKE_MOST)
    .sort((one, two) => unlike(two) - unlike(one));
  return widest ?? null;
}

function shareOf(way: RankedWay | undefined): number {
  return way === undefined ? 0 : worthOf(way);
}
