import { predictLanding } from './landing';
import { BOTH_SIDES, CENTRE_HIT, fromDiamond, SIDE, spoken } from './set-up';
import type { Trial } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

/** A level stroke with side: where it touches the far cushion tells the squirt. */
export const LINE = {
  name: 'line',
  ...TRIAL_TRAITS.line,
  predict: predictLanding,
  shots: (bed) =>
    BOTH_SIDES.map((sign) => ({
      stroke: { ...CENTRE_HIT, side: sign * SIDE, ...spoken('firm') },
      setup: fromDiamond(1, bed),
    })),
  hangsOn: ['distanceM'],
  beginWith: 0,
} as const satisfies Trial;
