import type { Range } from '../numerics/range';
import type { Opening } from './opening';

/**
 * What the object ball has to hit. A mouth lies square across the target line: the ball goes when
 * its centre crosses within half the mouth less a ball's radius of the middle. An angle says only
 * how far from the target line the ball may leave.
 */
export type Target =
  | {
      readonly kind: 'mouth';
      readonly distanceM: number;
      readonly mouthM: number;
      /** By rising speed; left out: the mouth is as wide to a fast ball as to a slow one. */
      readonly openings?: readonly Opening[];
    }
  | { readonly kind: 'angle'; readonly halfAngleRad: number };

/** What the engine accepts; a mouth must moreover be wider than the ball. */
export const TARGET_RANGES = {
  distanceM: { min: 0.001, max: 5 },
  mouthM: { min: 0, max: 1 },
  halfAngleRad: { min: 0.0001, max: 0.5 },
} as const satisfies Record<string, Range>;

/** How far from the target line the object ball may leave, on a straight way, rad. */
export function allowedRad(target: Target, ballRadiusM: number): number {
  if (target.kind === 'angle') return target.halfAngleRad;
  return Math.atan((target.mouthM / 2 - ballRadiusM) / target.distanceM);
}
