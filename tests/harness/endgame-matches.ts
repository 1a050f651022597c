import { byEase, byGoes, byGoesThen, byPlainWorth, byWorth, type Chooser } from './choosers';
import { ChoicesKept, type Endgame, playEndgame } from './endgame';
import { seededRandom } from './seeded-random';
import { randomPosition } from './ways-positions';

/** Who plays against who chooses by worth. */
export const OTHERS = {
  'plainer worth': byPlainWorth,
  goes: byGoes,
  'goes times then': byGoesThen,
  'the easiest pot, or the nearest hit': byEase,
} as const satisfies Readonly<Record<string, Chooser>>;

export type OtherName = keyof typeof OTHERS;
export const OTHER_NAMES = Object.keys(OTHERS) as readonly OtherName[];

/** A rack played by who chooses by worth and by another, first one beginning, then the other. */
export interface Pair {
  readonly other: OtherName;
  /** Of the two games the share that who chooses by worth won; a game without an end is half. */
  readonly share: number;
  readonly games: readonly [Endgame, Endgame];
}

/** What of a game a player won. */
export function shareOf({ winner }: Endgame, player: 0 | 1): number {
  if (winner === null) return 0.5;
  return winner === player ? 1 : 0;
}

/** One rack after the other, each played against all others: errors are the same wherever choices are. */
export function* endgameMatches(
  racks: number,
  balls: number,
  seed: number,
): Generator<readonly Pair[], void, void> {
  const random = seededRandom(seed);
  for (let at = 1; at <= racks; at++) {
    const rack = randomPosition(random, balls);
    const kept = new ChoicesKept();
    yield OTHER_NAMES.map((other): Pair => {
      const first = playEndgame(rack, [byWorth, OTHERS[other]], at, kept);
      const second = playEndgame(rack, [OTHERS[other], byWorth], at, kept);
      return { other, share: (shareOf(first, 0) + shareOf(second, 1)) / 2, games: [first, second] };
    });
  }
}
