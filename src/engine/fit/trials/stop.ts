import type { Kit } from '../../kit/kit';
import { endOfRun } from '../../motion/run';
import type { Stroke } from '../../stroke/stroke';
import { contactOf } from './meeting';
import { CENTRE_HIT, setup, spoken } from './set-up';
import type { Readings, Trial, TrialSetup } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

const STOP_HEIGHT = -0.45;
const STOP_GAPS_M = [0.03, 0.05, 0.07, 0.1, 0.15];

/** A low stroke full at a ball that is near: how far both run on tells how draw goes. */
export const STOP = {
  name: 'stop',
  ...TRIAL_TRAITS.stop,
  predict: predictRunsAfter,
  // The cue ball on the first diamond's line, the object ball straight before it. Played any
  // harder, the object ball would come to the far cushion.
  shots: ({ lengthM, ballRadiusM }) => {
    const room = (7 / 8) * lengthM - ballRadiusM;
    return STOP_GAPS_M.map((gapM) => ({
      stroke: { ...CENTRE_HIT, height: STOP_HEIGHT, ...spoken('soft') },
      setup: setup(lengthM, { gapM, distanceM: room - gapM - 2 * ballRadiusM }),
    }));
  },
  hangsOn: ['gapM', 'cutRad'],
} as const satisfies Trial;

/**
 * How far cue ball and object ball run on, along the straight line, after they meet; null where
 * they do not.
 */
export function predictRunsAfter(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const contact = contactOf(kit, stroke, setup);
  if (contact === null) return null;
  const { cueBall, objectBall } = contact.after;
  return {
    cueBallM: endOfRun(cueBall, kit).yM - cueBall.yM,
    objectBallM: endOfRun(objectBall, kit).yM - objectBall.yM,
  };
}
