import type { Pad } from '../ball/ball-state';
import type { Phase } from '../motion/phase';
import { length } from '../numerics/length';

/** A rectangle seen from above, m. */
export interface PlanBox {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

export function pointBox(xM: number, yM: number): Pad<PlanBox> {
  return { minX: xM, maxX: xM, minY: yM, maxY: yM };
}

/** Writes {@link pointBox} into a box. */
export function fillPointBox(box: Pad<PlanBox>, xM: number, yM: number): void {
  box.minX = xM;
  box.maxX = xM;
  box.minY = yM;
  box.maxY = yM;
}

/** A rectangle that holds the centre through a whole phase: the least one, where the bed is level. */
export function phaseBox(phase: Phase): PlanBox {
  const box = pointBox(0, 0);
  fillPhaseBox(box, phase);
  return box;
}

/** Writes {@link phaseBox} into a box. */
export function fillPhaseBox(box: Pad<PlanBox>, phase: Phase): void {
  const { start, durationS } = phase;
  fillPointBox(box, start.xM, start.yM);
  if (phase.drag !== null) {
    const farthestM = farthest(phase);
    box.minX -= farthestM;
    box.maxX += farthestM;
    box.minY -= farthestM;
    box.maxY += farthestM;
    return;
  }
  const turnX = turnAt(phase.linearX, phase.quadraticX, durationS);
  const turnY = turnAt(phase.linearY, phase.quadraticY, durationS);
  holdX(box, start.xM + (phase.linearX * turnX) / 2);
  holdY(box, start.yM + (phase.linearY * turnY) / 2);
  holdX(box, start.xM + (phase.linearX + phase.quadraticX * durationS) * durationS);
  holdY(box, start.yM + (phase.linearY + phase.quadraticY * durationS) * durationS);
}

function holdX(box: Pad<PlanBox>, xM: number): void {
  box.minX = Math.min(box.minX, xM);
  box.maxX = Math.max(box.maxX, xM);
}

function holdY(box: Pad<PlanBox>, yM: number): void {
  box.minY = Math.min(box.minY, yM);
  box.maxY = Math.max(box.maxY, yM);
}

/** When a parabola turns back, s, where it does before its end; else 0. */
function turnAt(linear: number, quadratic: number, durationS: number): number {
  const turnS = quadratic === 0 ? 0 : -linear / (2 * quadratic);
  return turnS > 0 && turnS < durationS ? turnS : 0;
}

/** No ball gets farther than this from where its phase begins, m. */
function farthest({ start, accelerationBound, durationS }: Phase): number {
  return (length(start.vx, start.vy) + (accelerationBound * durationS) / 2) * durationS;
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
