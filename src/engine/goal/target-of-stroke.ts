import { play } from '../direct/contact';
import type { HeldShot } from './held-shot';
import { mouthCrossing } from './object-ball-miss';
import { openingAt } from './opening';
import type { Target } from './target';

/** The target as wide as it is to the ball of one stroke, however wide it is to a slower one. */
export function targetOfStroke({ shot, layout, kit, target }: HeldShot, aimRad: number): Target {
  if (target.kind === 'angle' || target.openings === undefined) return target;
  const { kind, distanceM, mouthM, openings } = target;
  const ball = play(shot, layout, kit, aimRad).contact?.after.objectBall;
  const crossing = ball ? mouthCrossing(ball, shot.cutRad, distanceM, kit) : null;
  if (crossing === null) return { kind, distanceM, mouthM };
  const { halfM } = openingAt(openings, crossing.speedMps);
  return { kind, distanceM, mouthM: 2 * (halfM + kit.ballRadiusM) };
}
