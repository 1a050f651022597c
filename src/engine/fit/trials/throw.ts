import type { Kit } from '../../kit/kit';
import { lineCrossing } from '../../motion/line-crossing';
import { runOf } from '../../motion/run';
import { RAD_PER_DEG } from '../../numerics/angle';
import type { Stroke } from '../../stroke/stroke';
import { contactOf } from './meeting';
import { BOTH_SIDES, CENTRE_HIT, SIDE, setup } from './set-up';
import type { Readings, Trial, TrialSetup } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

const THROW_CUT_RAD = 30 * RAD_PER_DEG;
/** A ball's width between the two: so near, a crooked aim hardly turns the line of centres. */
const THROW_GAP_BALLS = 1;

/** A ball sent by side or by a cut: where it touches the far cushion tells how the balls rub. */
export const THROW = {
  name: 'throw',
  ...TRIAL_TRAITS.throw,
  predict: predictObjectLanding,
  // The object ball two diamonds before the far cushion: further off, a soft one might not reach it.
  shots: ({ lengthM, ballRadiusM }) => {
    const at = { gapM: THROW_GAP_BALLS * 2 * ballRadiusM, distanceM: lengthM / 4 - ballRadiusM };
    return BOTH_SIDES.flatMap((sign) => [
      {
        stroke: { ...CENTRE_HIT, side: sign * SIDE },
        setup: setup(lengthM, at),
      },
      {
        stroke: { ...CENTRE_HIT, headingRad: -sign * THROW_CUT_RAD },
        setup: setup(lengthM, { ...at, cutRad: sign * THROW_CUT_RAD }),
      },
    ]);
  },
  hangsOn: ['gapM', 'cutRad', 'distanceM'],
  beginWith: 2,
  // The object ball is to run along the table.
  headingOf: (cutRad) => 0 - cutRad,
} as const satisfies Trial;

/** Where the object ball reaches the far cushion, off the line of centres as it was set up. */
export function predictObjectLanding(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const contact = contactOf(kit, stroke, setup);
  if (contact === null) return null;
  const { objectBall } = contact.after;
  const crossing = lineCrossing(runOf(objectBall, 0, kit), {
    fromXM: objectBall.xM,
    fromYM: objectBall.yM,
    alongRad: setup.cutRad,
    distanceM: setup.distanceM,
  });
  return crossing && { objectLandingM: crossing.rightM };
}
