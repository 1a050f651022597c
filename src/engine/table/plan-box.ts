import type { Phase } from '../motion/phase';
import { length } from '../numerics/length';

/** A rectangle seen from above, m. */
export interface PlanBox {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

export function pointBox(xM: number, yM: number): PlanBox {
  return { minX: xM, maxX: xM, minY: yM, maxY: yM };
}

/** A rectangle that holds the centre through a whole phase: the least one, where the bed is level. */
export function phaseBox(phase: Phase): PlanBox {
  const { start, durationS } = phase;
  if (phase.drag !== null) return grown(pointBox(start.xM, start.yM), farthest(phase));
  const [minX, maxX] = extent(start.xM, phase.linearX, phase.quadraticX, durationS);
  const [minY, maxY] = extent(start.yM, phase.linearY, phase.quadraticY, durationS);
  return { minX, maxX, minY, maxY };
}

/** No ball gets farther than this from where its phase begins, m. */
function farthest({ start, accelerationBound, durationS }: Phase): number {
  const speedMps = length(start.vx, start.vy);
  return (speedMps + (accelerationBound * durationS) / 2) * durationS;
}

/** Least and most of a parabola from 0 to a time. */
function extent(
  start: number,
  linear: number,
  quadratic: number,
  durationS: number,
): readonly [number, number] {
  const end = start + (linear + quadratic * durationS) * durationS;
  const turnS = quadratic === 0 ? 0 : -linear / (2 * quadratic);
  const turn = turnS > 0 && turnS < durationS ? start + (linear * turnS) / 2 : start;
  return [Math.min(start, end, turn), Math.max(start, end, turn)];
}

export function grown(box: PlanBox, byM: number): PlanBox {
  return {
    minX: box.minX - byM,
    maxX: box.maxX + byM,
    minY: box.minY - byM,
    maxY: box.maxY + byM,
  };
}

/** Whether two rectangles are nowhere within a distance of each other along x or along y. */
export function areApart(a: PlanBox, b: PlanBox, withinM: number): boolean {
  return (
    a.minX - b.maxX > withinM ||
    b.minX - a.maxX > withinM ||
    a.minY - b.maxY > withinM ||
    b.minY - a.maxY > withinM
  );
}

export function isInside(inner: PlanBox, outer: PlanBox): boolean {
  return (
    inner.minX >= outer.minX &&
    inner.maxX <= outer.maxX &&
    inner.minY >= outer.minY &&
    inner.maxY <= outer.maxY
  );
}
