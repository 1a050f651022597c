import type { Phase } from './phase';

/**
 * Something that ends a ball's free run: another ball. On a whole table, where all may move, the
 * `approach-*` files of `table` look for what a ball meets.
 */
export interface Obstacle {
  /**
   * When a ball in this phase first meets the obstacle.
   *
   * @returns seconds since the phase's start, or Infinity if not within the phase
   */
  touchTime(phase: Phase): number;
}
