import type { Kit } from '../../kit/kit';
import type { Stroke } from '../../stroke/stroke';
import { CENTRE_HIT, fromDiamond, ROLLS_AT_ONCE, spoken } from './set-up';
import { predictRun } from './speed';
import type { Readings, Trial, TrialSetup } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

/**
 * A ball that rolls squarely into the far rail: how fast it came, and where it rests, tell what
 * cushions give back. Two speeds tell what they lose on the harder one.
 */
export const REBOUND = {
  name: 'rebound',
  ...TRIAL_TRAITS.rebound,
  predict: predictRebound,
  shots: (bed) =>
    (['medium', 'firm'] as const).map((word) => ({
      stroke: { ...CENTRE_HIT, height: ROLLS_AT_ONCE, ...spoken(word) },
      setup: fromDiamond(1, bed),
    })),
  hangsOn: ['distanceM', 'bedLengthM'],
} as const satisfies Trial;

/** How long it takes to the far rail, and how far it runs in all; null where it stops before. */
function predictRebound(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const read = predictRun(kit, stroke, setup);
  return read?.timeS === undefined ? null : read;
}
