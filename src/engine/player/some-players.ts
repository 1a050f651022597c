import { likelihoodOf } from './known-player';
import type { PlayerKnowledge } from './learn';
import { playerOf, type Unknowns } from './player-of';
import { type AskedShot, type PlainLine, shotLine } from './shot-line';

/** Players who are all as likely, drawn evenly from those who may be the one: plain data to keep. */
export type SomePlayers = readonly Unknowns[];

const SOME = 128;
/** A thousandth of a prior deviation is nothing. */
const ROUNDED = 1000;

export function somePlayers({ points }: PlayerKnowledge): SomePlayers {
  const byLevel = [...points].sort((a, b) => (a.unknowns[0] ?? 0) - (b.unknowns[0] ?? 0));
  const some: Unknowns[] = [];
  let sum = 0;
  for (const { unknowns, weight } of byLevel) {
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
 * How far a chance may be off for what is not known of the player.
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
  return { low: at(LOW), high: at(HIGH) };
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
