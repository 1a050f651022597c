import { computed, type ReadonlySignal } from '@preact/signals';
import type { PlayedShot, Player } from '../../store/player';
import { isSame } from '../../store/same-value';

/** All that is known of a player comes from this. */
export interface PlayerQuestion {
  readonly playerId: string;
  readonly madeOf10: number | null;
  /** Those that count, the oldest first. */
  readonly shots: readonly PlayedShot[];
  /** All that matters of it, a shot a line: the same for the same question. */
  readonly lines: readonly string[];
}

/** Older ones weigh next to nothing, and each costs work. */
const MOST_LEARNT = 1000;

/** What is asked of a player now; it stays the very same while nothing that matters changes. */
export function playerQuestion(
  player: ReadonlySignal<Player>,
  played: ReadonlySignal<readonly PlayedShot[]>,
): ReadonlySignal<PlayerQuestion> {
  let last: PlayerQuestion | null = null;
  return computed(() => {
    const { id, madeOf10 } = player.value;
    const shots = played.value.filter(({ asMeant }) => asMeant).slice(-MOST_LEARNT);
    const lines = [id, `${madeOf10}`, ...shots.map(lineOf)];
    if (last === null || !isSame(lines, last.lines)) {
      last = { playerId: id, madeOf10, shots, lines };
    }
    return last;
  });
}

/** A shot keeps what was asked: what became of it alone is ever changed. */
function lineOf({ id, shot, aimRad, result, drill }: PlayedShot): string {
  return [
    id + (drill?.rung?.stopped ?? ''),
    result,
    aimRad,
    shot.distanceM,
    shot.cutRad,
    shot.side,
    shot.speedMps,
  ].join(' ');
}

/** Whether there is nothing to learn from. */
export function isUntold({ madeOf10, shots }: PlayerQuestion): boolean {
  return madeOf10 === null && shots.length === 0;
}
