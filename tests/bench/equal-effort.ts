import type { Query } from '../harness/random-shots';
import type { PathOptions } from '../truth/reference/cue-ball-path';
import { findAim } from '../truth/reference/find-aim';
import { FINE } from '../truth/reference/play-shot';
import { stretchRunner } from '../truth/reference/stretch';

/** A shot, and all the aims that the engine finds for it. */
export interface Solved extends Query {
  readonly aimsRad: readonly number[];
}

/** How hard the reference tries. */
export interface Effort extends PathOptions {
  readonly tolerance: number;
  /** Of the object ball's direction, rad. */
  readonly missTolerance: number;
}

/** From hasty to painstaking; each step gives about two digits. */
const EFFORTS: readonly Effort[] = [
  [1e-4, 1e-3, 1e-5],
  [1e-6, 2.5e-4, 1e-7],
  [1e-8, 5e-5, 1e-9],
  [1e-10, 1e-5, 1e-11],
].map(([tolerance = 0, restSpeedMps = 0, missTolerance = 0]) => ({
  tolerance,
  restSpeedMps,
  missTolerance,
  run: stretchRunner(tolerance),
}));

/** Farther apart than this, rad, two aims are two ways to play the shot. */
const SAME_WAY = 1e-3;

/**
 * The least effort whose aims are, on average, as near to the finest ones as the engine's are.
 *
 * @throws Error where none is
 */
export function equalEffort(shots: readonly Solved[]): Effort {
  const truths = shots.map(({ shot, kit }) => findAim(shot, kit, FINE, 1e-12));
  const meanError = (aimOf: (shot: Solved, truth: number) => number) => {
    const errors = shots.flatMap((shot, index) => {
      const truth = truths[index];
      const error = truth == null ? SAME_WAY : Math.abs(aimOf(shot, truth) - truth);
      return error < SAME_WAY ? [error] : [];
    });
    if (errors.length < shots.length * 0.9) throw new Error('too few shots to compare');
    return errors.reduce((sum, error) => sum + error, 0) / errors.length;
  };
  const engine = meanError(({ aimsRad }, truth) =>
    aimsRad.reduce((best, aim) => (Math.abs(aim - truth) < Math.abs(best - truth) ? aim : best)),
  );
  const enough = EFFORTS.find(
    (effort) =>
      meanError(
        ({ shot, kit }) => findAim(shot, kit, effort, effort.missTolerance) ?? Number.NaN,
      ) <= engine,
  );
  if (enough === undefined) throw new Error(`no effort reaches the engine’s error, ${engine} rad`);
  return enough;
}
