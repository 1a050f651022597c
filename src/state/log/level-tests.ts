import type { LevelShot } from '../../engine/player/level-test';
import type { PlayedShot } from '../../store/player';
import { isSame } from '../../store/same-value';

/** How many shots that count make a level test. */
export const TEST_SHOTS = 15;

/** A level test, as its shots tell of it: it is kept nowhere else. */
export interface LevelTest {
  readonly id: string;
  /** Of its first shot, ms since 1970. */
  readonly begunAtMs: number;
  /** Those that count, the oldest first. */
  readonly shots: readonly PlayedShot[];
  readonly isDone: boolean;
}

/**
 * The level tests of a player, the oldest first.
 *
 * @param played all that they have played, the oldest first
 */
export function levelTests(played: readonly PlayedShot[]): readonly LevelTest[] {
  const byTest = new Map<string, PlayedShot[]>();
  for (const shot of played) {
    if (shot.testId === null || !shot.asMeant) continue;
    const shots = byTest.get(shot.testId);
    if (shots) shots.push(shot);
    else byTest.set(shot.testId, [shot]);
  }
  return [...byTest].map(([id, shots]) => ({
    id,
    begunAtMs: shots[0]?.atMs ?? 0,
    shots,
    isDone: shots.length >= TEST_SHOTS,
  }));
}

/** Those of the test's shots that have not been played in it: no lie comes twice. */
export function notYetLaid(
  level: readonly LevelShot[],
  { shots }: Pick<LevelTest, 'shots'>,
): readonly LevelShot[] {
  return level.filter(
    ({ position, goal }) =>
      !shots.some((played) => {
        const laid = played.position;
        return laid && isSame(laid.balls, position) && isSame(laid.goal, goal);
      }),
  );
}
