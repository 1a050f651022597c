import { RAD_PER_DEG } from '../../numerics/angle';
import { predictLanding } from './landing';
import { BOTH_SIDES, CENTRE_HIT, fromDiamond, SIDE, spoken } from './set-up';
import type { Trial } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

const LEVEL_SIDE = { side: SIDE, height: 0 };
/** As far out, but low: the ball slides longer, and its path tells more of the cloth. */
const LOW_SIDE = { side: 0.33, height: -0.3 };
/** The cue is raised no further: higher, a firm stroke begins to endanger the cloth (our judgement). */
const RAISED_RAD = [10 * RAD_PER_DEG, 20 * RAD_PER_DEG];

/** A raised stroke with side: its path curves by what the cloth does. */
export const CURVE = {
  name: 'curve',
  ...TRIAL_TRAITS.curve,
  predict: predictLanding,
  shots: (bed) =>
    RAISED_RAD.flatMap((elevationRad) =>
      (['medium', 'firm'] as const).flatMap((word) =>
        BOTH_SIDES.flatMap((sign) =>
          [LEVEL_SIDE, LOW_SIDE].map(({ side, height }) => ({
            stroke: { ...CENTRE_HIT, side: sign * side, height, elevationRad, ...spoken(word) },
            setup: fromDiamond(1, bed),
          })),
        ),
      ),
    ),
  hangsOn: ['distanceM'],
  after: 'line',
} as const satisfies Trial;
