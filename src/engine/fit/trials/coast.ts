import { STANDARD_GRAVITY as g } from '../../ball/gravity';
import { PUSH_TO_ROLL } from '../../ball/inertia';
import type { Kit } from '../../kit/kit';
import type { Stroke } from '../../stroke/stroke';
import { CENTRE_HIT, setup, spoken } from './set-up';
import type { Readings, Trial, TrialSetup } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

/** A ball rolled by hand: how long it takes to its rest tells how fast the cloth is. */
export const COAST = {
  name: 'coast',
  ...TRIAL_TRAITS.coast,
  predict: predictCoast,
  // Up and down the table alike: the difference tells how it lies.
  shots: ({ lengthM }) =>
    [0, Math.PI].map((headingRad) => ({
      stroke: { ...CENTRE_HIT, headingRad, ...spoken('soft') },
      setup: setup(lengthM, { distanceM: (5 / 8) * lengthM }),
    })),
  hangsOn: ['distanceM'],
  beginWith: 1,
} as const satisfies Trial;

/**
 * How long a ball that rolls to rest over the distance takes for it: T = √(2D/a), with a = μ_r g
 * less what the bed's fall gives back, (5/7) g s. Whoever pushed it, and how hard, does not matter.
 */
export function predictCoast(kit: Kit, _stroke: Stroke, setup: TrialSetup): Readings | null {
  const slowing = kit.rollFriction * g - PUSH_TO_ROLL * g * kit.bedSlope.alongM_per_M;
  return slowing > 0 ? { timeS: Math.sqrt((2 * setup.distanceM) / slowing) } : null;
}
