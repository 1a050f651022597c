import { goes, missAt, type Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { SPEED_FROM_MPS } from '../stroke/speed-bands';
import { STROKE_RANGES, type Stroke } from '../stroke/stroke';

/** Speeds tried, as factors of the one before: a quarter firmer, a fifth softer. */
const STEP = 1.25;
/** Firmer than a power stroke is no remedy. */
const FIRMEST_MPS = SPEED_FROM_MPS.break;
const HALVINGS = 8;

/** Whether a stroke has an aim, and played just as meant the object ball gets into its target. */
export function goesAsMeant(task: Task, kit: Kit, stroke: Omit<Stroke, 'aimRad'>): boolean {
  const [aimRad] = task.aims(kit, stroke);
  return aimRad !== undefined && goes(missAt(task, kit, { ...stroke, aimRad }));
}

/**
 * The speed, m/s, nearest to that of a stroke that does not go at which it does, the rest of it as it
 * is; null where there is none short of a break. Firmer and softer are both tried.
 */
export function nearestSpeed(task: Task, kit: Kit, stroke: Omit<Stroke, 'aimRad'>): number | null {
  const goesAt = (speedMps: number) => goesAsMeant(task, kit, { ...stroke, speedMps });
  const softest = STROKE_RANGES.speedMps.min;
  let [firmer, softer] = [stroke.speedMps, stroke.speedMps];
  while (firmer < FIRMEST_MPS || softer > softest) {
    const [firmerBefore, softerBefore] = [firmer, softer];
    firmer = Math.min(firmer * STEP, Math.max(FIRMEST_MPS, stroke.speedMps));
    if (goesAt(firmer)) return closest(goesAt, firmerBefore, firmer);
    softer = Math.max(softer / STEP, softest);
    if (goesAt(softer)) return closest(goesAt, softerBefore, softer);
  }
  return null;
}

/** Closes in from a speed that goes on one that does not. */
function closest(goesAt: (speedMps: number) => boolean, fails: number, works: number): number {
  let [bad, good] = [fails, works];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (bad + good) / 2;
    if (goesAt(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
