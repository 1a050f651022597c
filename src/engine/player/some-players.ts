import { likelihoodOf } from './known-player';
import type { PlayerKnowledge } from './learn';
import { playerOf, type Unknowns } from './player-of';
import { type AskedShot, type PlainLine, shotLine } from './shot-line';

/** Players who are all as likely, drawn evenly from those who may be the one: plain data to keep. */
export type SomePlayers = readonly Unknowns[];

const SOME = 128;
/** A thousandth of a prior deviation is nothing. */
const ROUNDED = 1000;

/**
 * Some of all that may be the player, evenly from who makes most to who makes least: so their mean is
 * near that of all. On 60 ordinary shots it is half a point off, root mean square, once some 40 are
 * logged. Where `made` alone is known it is one or two points off, and up to five on single shots.
 *
 * @param question the question's line: an ordinary shot, taken as a straight one and cut either way
 */
export function somePlayers({ points }: PlayerKnowledge, question: PlainLine): SomePlayers {
  const cuts = ([-1, 0, 1] as const).map((fullSide) => ({ ...question, fullSide }));
  const makes = ({ unknowns }: { readonly unknowns: Unknowns }) => {
    const player = playerOf(unknowns);
    return cuts.reduce((sum, cut) => sum + likelihoodOf(player, cut, 'went'), 0);
  };
  const byShare = points
    .map((point) => ({ ...point, share: makes(point) }))
    .sort((a, b) => b.share - a.share);
  const some: Unknowns[] = [];
  let sum = 0;
  for (const { unknowns, weight } of byShare) {
    sum += weight * SOME;
    while (some.length + 0.5 < sum && some.length < SOME) {
      some.push(unknowns.map((value) => Math.round(value * ROUNDED) / ROUNDED));
    }
  }
  return some;
}

/** Shares of a chance's central nine tenths. */
const [LOW, HIGH] = [0.05, 0.95];

/** The central nine tenths of a chance. */
export interface ChanceRange {
  readonly low: number;
  readonly high: number;
}

/**
 * How far a chance may be off for what is not known of the player. What is told lies within.
 *
 * @param share the chance as told, about which the others lie
 */
export function chanceRange(some: SomePlayers, line: PlainLine, share: number): ChanceRange {
  const shares = some.map((unknowns) => likelihoodOf(playerOf(unknowns), line, 'went'));
  const mean = shares.reduce((sum, one) => sum + one, 0) / shares.length;
  const ordered = [...shares].sort((a, b) => a - b);
  const at = (place: number) => {
    const found = ordered[Math.floor(place * ordered.length)] ?? mean;
    return Math.min(1, Math.max(0, found + share - mean));
  };
  // Of a shot that hardly one of them makes, the mean lies beyond nine tenths.
  return { low: Math.min(share, at(LOW)), high: Math.max(share, at(HIGH)) };
}

/** A chance as told, and the shot it is of: plain data. */
export interface RangeJob {
  readonly some: SomePlayers;
  readonly asked: AskedShot;
  readonly share: number;
}

/** {@link chanceRange} of a shot that has yet to get its line; null where it has none. */
export function rangeOfChance({ some, asked, share }: RangeJob): ChanceRange | null {
  const line = shotLine(asked);
  return line && chanceRange(some, line, share);
}
