import { outOfRange } from '../aim/refusal';
import type { Refusal } from '../aim/shot';
import { isWithin, type Range } from '../model/range';
import { TARGET_RANGES, type Target } from './target';

const DEG = 180 / Math.PI;

/** Why the engine cannot take a target, or null where it can. */
export function checkTarget(target: Target, ballRadiusM: number): Refusal | null {
  if (target.kind === 'angle') {
    const { min, max } = TARGET_RANGES.halfAngleRad;
    const range = { min: min * DEG, max: max * DEG };
    return check('The target’s half angle', target.halfAngleRad * DEG, range, '°');
  }
  const mouth = { min: 2 * ballRadiusM, max: TARGET_RANGES.mouthM.max };
  return (
    check('The target’s distance', target.distanceM, TARGET_RANGES.distanceM, ' m') ??
    check('The mouth', target.mouthM, mouth, ' m') ??
    (target.mouthM > mouth.min ? null : tell('The mouth', mouth, ' m'))
  );
}

function check(name: string, value: number, range: Range, unit: string): Refusal | null {
  return isWithin(range, value) ? null : tell(name, range, unit);
}

function tell(name: string, { min, max }: Range, unit: string): Refusal {
  const span = `from ${Number(min.toPrecision(4))} to ${Number(max.toPrecision(4))}${unit}`;
  return outOfRange('target', `${name} must be ${span}.`, `Give a value ${span}.`);
}
