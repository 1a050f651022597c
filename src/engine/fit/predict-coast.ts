import { STANDARD_GRAVITY as g } from '../ball/gravity';
import { PUSH_TO_ROLL } from '../ball/inertia';
import type { Kit } from '../kit/kit';
import type { Stroke } from '../stroke/stroke';
import type { Readings, TrialSetup } from './trial-shot';

/**
 * How long a ball that rolls to rest over the distance takes for it: T = √(2D/a), with a = μ_r g
 * less what the bed's fall gives back, (5/7) g s. Whoever pushed it, and how hard, does not matter.
 */
export function predictCoast(kit: Kit, _stroke: Stroke, setup: TrialSetup): Readings | null {
  const slowing = kit.rollFriction * g - PUSH_TO_ROLL * g * kit.bedSlope.alongM_per_M;
  return slowing > 0 ? { timeS: Math.sqrt((2 * setup.distanceM) / slowing) } : null;
}
