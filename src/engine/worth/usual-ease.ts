import { isLegal } from '../lie/legal-place';
import type { NamedBall } from '../lie/position';
import { latticePoint } from '../numerics/lattice';
import type { Ease } from './ease';

/** Layouts of a cue ball and one other, evenly all over the bed. */
const LAYOUTS = 48;

/**
 * How easy a usual shot is for a player on a table, 0 to 1: the mean ease of one ball alone, it and the cue
 * ball anywhere on the bed. A ball that lies where none can counts for nothing.
 */
export function usualEase(ease: Ease): number {
  const { shape, kit } = ease.bed;
  let sum = 0;
  let count = 0;
  for (let layout = 0; layout < LAYOUTS; layout++) {
    const along = (dimension: number, sizeM: number) =>
      (latticePoint(layout, dimension, 0) - 0.5) * (sizeM - 2 * kit.ballRadiusM);
    const cueBall = {
      name: 'cue',
      xM: along(0, shape.widthM),
      yM: along(1, shape.lengthM),
    } as const;
    const ball: NamedBall = { name: 1, xM: along(2, shape.widthM), yM: along(3, shape.lengthM) };
    if (!isLegal(cueBall, [], shape, kit) || !isLegal(ball, [cueBall], shape, kit)) continue;
    sum += ease.easiest([cueBall, ball], [1])?.chance ?? 0;
    count++;
  }
  return sum / Math.max(1, count);
}
