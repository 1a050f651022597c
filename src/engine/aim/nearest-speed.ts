import type { Kit } from '../model/kit';
import { INPUT_RANGES } from './input-ranges';
import type { Shot } from './shot';
import { solveAim } from './solve-aim';

/** Speeds tried, as factors of the one before: a tenth firmer, a tenth softer. */
const STEP = 1.1;
/** Firmer than a power stroke, m/s (common practice, no source), is no remedy. */
const FIRMEST_MPS = 4.5;
const HALVINGS = 10;

/**
 * The speed, m/s, nearest to that of a refused shot at which there is an aim, the rest of the shot
 * as it is; null where there is none short of a power stroke. Firmer and softer are both tried.
 */
export function nearestSpeed(shot: Shot, kit: Kit): number | null {
  const goes = (speedMps: number) => solveAim({ ...shot, speedMps }, kit).ok;
  const softest = INPUT_RANGES.speedMps.min;
  let [firmer, softer] = [shot.speedMps, shot.speedMps];
  while (firmer < FIRMEST_MPS || softer > softest) {
    const [firmerBefore, softerBefore] = [firmer, softer];
    firmer = Math.min(firmer * STEP, Math.max(FIRMEST_MPS, shot.speedMps));
    if (goes(firmer)) return closest(goes, firmerBefore, firmer);
    softer = Math.max(softer / STEP, softest);
    if (goes(softer)) return closest(goes, softerBefore, softer);
  }
  return null;
}

/** Closes in from a speed that goes on one that does not. */
function closest(goes: (speedMps: number) => boolean, fails: number, works: number): number {
  let [bad, good] = [fails, works];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (bad + good) / 2;
    if (goes(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
