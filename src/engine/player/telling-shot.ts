import { likelihoodOf, ownScatter, possibleResults } from './known-player';
import type { PlayerKnowledge } from './learn';
import type { Player } from './player-of';
import type { PlainLine, TipLine } from './shot-line';
import { weighedPlayers } from './weighed-players';

/** Of the set of players one in so many is asked: enough to put shots in order. */
const ASKED = 4;
/** Players whose lines scatter much alike count as one: so many groups of equal weight. */
const GROUPS = 16;

/** Players whose lines scatter much alike, and how likely each is. */
type Group = readonly { readonly player: Player; readonly weight: number }[];

function groupsOf(knowledge: PlayerKnowledge, question: TipLine): readonly Group[] {
  const asked = weighedPlayers(knowledge).filter((_, index) => index % ASKED === 0);
  const total = asked.reduce((sum, { weight }) => sum + weight, 0);
  const ordered = asked
    .map((player) => ({ player, weight: player.weight, own: ownScatter(player, question) }))
    .sort((a, b) => a.own - b.own);
  const groups: { player: Player; weight: number }[][] = [];
  let before = 0;
  for (const { player, weight } of ordered) {
    const group = Math.min(GROUPS - 1, Math.floor(before * GROUPS));
    groups[group] ??= [];
    groups[group]?.push({ player, weight: weight / total });
    before += weight / total;
  }
  return groups.filter((group) => group !== undefined);
}

/**
 * How much a shot's result is expected to tell, in nats: how much less surprising results are to who
 * knows a player's group than to who knows what is known. Source: Lindley, Ann. Math. Stat. 27:986
 * (1956) (from memory).
 */
function tells(groups: readonly Group[], line: PlainLine): number {
  let told = 0;
  for (const result of possibleResults(line)) {
    let all = 0;
    for (const group of groups) {
      let [of, likely] = [0, 0];
      for (const { player, weight } of group) {
        of += weight;
        likely += weight * likelihoodOf(player, line, result);
      }
      all += likely;
      if (likely > 0) told += likely * Math.log(likely / of);
    }
    if (all > 0) told -= all * Math.log(all);
  }
  return told;
}

/**
 * The shot of several that tells most of how a player's line scatters; null of none.
 *
 * @param question the question's line: there it is told. A level tells less, for the cue has a part in it
 */
export function mostTelling<S extends { readonly line: PlainLine }>(
  knowledge: PlayerKnowledge,
  candidates: readonly S[],
  question: TipLine,
): S | null {
  const groups = groupsOf(knowledge, question);
  let [best, most]: [S | null, number] = [null, Number.NEGATIVE_INFINITY];
  for (const candidate of candidates) {
    const told = tells(groups, candidate.line);
    if (told > most) [best, most] = [candidate, told];
  }
  return best;
}
