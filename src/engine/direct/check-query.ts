import type { Kit } from '../kit/kit';
import { findKitProblem } from '../kit/kit-numbers';
import { comesToRest } from '../motion/roll';
import { isWithin } from '../numerics/range';
import { isBeyondMiscue } from '../stroke/miscue-limit';
import { STROKE_RANGES } from '../stroke/stroke';
import { INPUT_RANGES } from './input-ranges';
import { outOfRange, refusal } from './refusal';
import type { Refusal, Shot } from './shot';

/** Why the engine cannot take a query, or null where it can. */
export function checkQuery(shot: Shot, kit: Kit, aimRad?: number): Refusal | null {
  const outside = checkShot(shot) ?? checkAim(aimRad) ?? checkKit(kit);
  if (outside !== null) return outside;
  if (isBeyondMiscue(shot.side, shot.height)) return refusal('beyond-miscue-limit', 'side');
  return comesToRest(kit) ? null : refusal('never-stops', 'kit');
}

function checkShot(shot: Shot): Refusal | null {
  for (const field in INPUT_RANGES) {
    const key = field as keyof Shot;
    if (key === 'objectDistanceM' && shot[key] === undefined) continue;
    if (!isWithin(INPUT_RANGES[key], shot[key])) return outOfRange(key, INPUT_RANGES[key]);
  }
  return null;
}

function checkAim(aimRad: number | undefined): Refusal | null {
  if (aimRad === undefined || isWithin(STROKE_RANGES.aimRad, aimRad)) return null;
  return outOfRange('aimRad', STROKE_RANGES.aimRad);
}

function checkKit(kit: Kit): Refusal | null {
  const problem = findKitProblem(kit);
  return problem && outOfRange('kit', problem.range, problem.quantity);
}
