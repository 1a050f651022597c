import { likelihoods, playerOf } from './known-player';
import type { PlayerKnowledge } from './learn';
import type { PlainLine, Result } from './shot-line';

/** Of the set of players one in so many is asked: enough to put shots in order. */
const ASKED = 4;
/** Players of about one level count as one: so many levels of equal weight. */
const LEVELS = 16;

/**
 * How much a shot's result is expected to tell of a player's level, in nats: how much less surprising
 * results are to who knows the level than to who knows what is known. Source: Lindley, Ann. Math.
 * Stat. 27:986 (1956) (from memory).
 */
function tells({ points }: PlayerKnowledge, line: PlainLine): number {
  const asked = points.filter((_, index) => index % ASKED === 0);
  const total = asked.reduce((sum, { weight }) => sum + weight, 0);
  const byLevel = asked.sort((a, b) => (a.unknowns[0] ?? 0) - (b.unknowns[0] ?? 0));
  const all = new Map<Result, number>();
  let level = new Map<Result, number>();
  let [before, of, known] = [0, 0, 0];
  const close = () => {
    for (const likely of level.values()) known += of * surpriseOf(likely / of);
    [level, of] = [new Map(), 0];
  };
  for (const { unknowns, weight: given } of byLevel) {
    const weight = given / total;
    const results = Object.entries(likelihoods(playerOf(unknowns), line)) as [Result, number][];
    for (const [result, likely] of results) {
      for (const map of [all, level]) map.set(result, (map.get(result) ?? 0) + weight * likely);
    }
    of += weight;
    if (Math.floor((before + weight) * LEVELS) > Math.floor(before * LEVELS)) close();
    before += weight;
  }
  if (of > 0) close();
  return [...all.values()].reduce((total, likely) => total + surpriseOf(likely), 0) - known;
}

function surpriseOf(likely: number): number {
  return likely > 0 ? -likely * Math.log(likely) : 0;
}

/** The shot of several that tells most; null of none. */
export function mostTelling<S extends { readonly line: PlainLine }>(
  knowledge: PlayerKnowledge,
  candidates: readonly S[],
): S | null {
  let [best, most]: [S | null, number] = [null, Number.NEGATIVE_INFINITY];
  for (const candidate of candidates) {
    const told = tells(knowledge, candidate.line);
    if (told > most) [best, most] = [candidate, told];
  }
  return best;
}
