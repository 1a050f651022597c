import { outOfRange } from '../direct/refusal';
import type { Refusal } from '../direct/shot';
import { isWithin, type Range } from '../numerics/range';
import { TARGET_RANGES, type Target } from './target';

/** Why the engine cannot take a target, or null where it can. */
export function checkTarget(target: Target, ballRadiusM: number): Refusal | null {
  if (target.kind === 'angle') {
    return check('halfAngleRad', target.halfAngleRad, TARGET_RANGES.halfAngleRad);
  }
  const mouth = { min: 2 * ballRadiusM, max: TARGET_RANGES.mouthM.max };
  return (
    check('distanceM', target.distanceM, TARGET_RANGES.distanceM) ??
    check('mouthM', target.mouthM, mouth) ??
    (target.mouthM > mouth.min ? null : outOfRange('target', mouth, 'mouthM'))
  );
}

function check(quantity: string, value: number, range: Range): Refusal | null {
  return isWithin(range, value) ? null : outOfRange('target', range, quantity);
}
