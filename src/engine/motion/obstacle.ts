import type { Phase } from './phase';

/** Something that ends a ball's free run: a ball, and one day a cushion or a pocket. */
export interface Obstacle {
  /**
   * When a ball in this phase first meets the obstacle.
   *
   * @returns seconds since the phase's start, or Infinity if not within the phase
   */
  touchTime(phase: Phase): number;
}
