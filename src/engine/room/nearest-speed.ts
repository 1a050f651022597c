import { INPUT_RANGES } from '../direct/input-ranges';
import { layoutOf } from '../direct/layout';
import type { Shot } from '../direct/shot';
import { solveAim } from '../direct/solve-aim';
import { goes, inputsOf, missOfStroke } from '../goal/held-shot';
import type { Target } from '../goal/target';
import type { Kit } from '../kit/kit';
import { SPEED_FROM_MPS } from '../stroke/speed-bands';

/** Speeds tried, as factors of the one before: a quarter firmer, a fifth softer. */
const STEP = 1.25;
/** Firmer than a power stroke is no remedy. */
const FIRMEST_MPS = SPEED_FROM_MPS.break;
const HALVINGS = 8;

/** Whether a shot has an aim, and played just as meant the object ball gets into its target. */
export function goesAsMeant(shot: Shot, kit: Kit, target: Target): boolean {
  const answer = solveAim(shot, kit);
  if (!answer.ok) return false;
  const held = { shot, kit, target, layout: layoutOf(shot, kit.ballRadiusM) };
  return goes(missOfStroke(held, inputsOf(shot, answer.aimRad)));
}

/**
 * The speed, m/s, nearest to that of a shot that does not go at which it does, the rest of the shot
 * as it is; null where there is none short of a break. Firmer and softer are both tried.
 */
export function nearestSpeed(shot: Shot, kit: Kit, target: Target): number | null {
  const goesAt = (speedMps: number) => goesAsMeant({ ...shot, speedMps }, kit, target);
  const softest = INPUT_RANGES.speedMps.min;
  let [firmer, softer] = [shot.speedMps, shot.speedMps];
  while (firmer < FIRMEST_MPS || softer > softest) {
    const [firmerBefore, softerBefore] = [firmer, softer];
    firmer = Math.min(firmer * STEP, Math.max(FIRMEST_MPS, shot.speedMps));
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
