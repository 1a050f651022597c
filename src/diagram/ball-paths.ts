import type { TablePlay } from '../engine/table/table-play';
import { spotsOf } from './table-fan';
import type { TableMap } from './table-map';
import { pathThrough } from './table-rails';

/** The way of one ball that moves, px. */
export interface BallPath {
  /** Its place in the play's list: 0 is the cue ball. */
  readonly ball: number;
  readonly path: string;
}

/**
 * The ways of all balls that move, until some moment.
 * @param untilS since the stroke
 */
export function ballPaths(
  { balls }: TablePlay,
  { toPoint }: Pick<TableMap, 'toPoint'>,
  untilS = Number.POSITIVE_INFINITY,
): readonly BallPath[] {
  return balls.flatMap(({ from, phases }, ball) => {
    const gone = phases.filter(({ startS }) => startS < untilS);
    if (gone.length === 0) return [];
    const spots = gone.flatMap((phase) =>
      spotsOf(phase, Math.min(phase.durationS, untilS - phase.startS)),
    );
    return [{ ball, path: pathThrough([from, ...spots].map(toPoint)) }];
  });
}

/** When a ball falls, s since the stroke; null where it does not. */
export function fallsAtS({ balls }: TablePlay, ball: number): number | null {
  const outcome = balls[ball]?.outcome;
  return outcome?.kind === 'pocketed' ? outcome.timeS : null;
}
