import { missOf, type Play } from '../aim/contact';
import { travel } from '../events/journey';
import { lineCrossing } from '../events/line-crossing';
import type { Kit } from '../model/kit';
import type { Target } from './target';

/** Why a played stroke has no miss to tell: the object ball is not touched, or stops on the way. */
export type Lost = 'untouched' | 'short';

/**
 * How far right of its target the object ball of a played stroke goes, as a share of what the
 * target allows: it goes while this is within ±1.
 *
 * @param cutRad direction of the target line, right + of the straight line
 */
export function objectBallMiss(
  played: Play,
  cutRad: number,
  target: Target,
  kit: Kit,
): number | Lost {
  if (played.contact === null) return 'untouched';
  if (target.kind === 'angle') return missOf(played, cutRad) / target.halfAngleRad;
  const ball = played.contact.after.objectBall;
  const crossing = lineCrossing(travel(ball, 0, kit, []).phases, {
    fromXM: ball.xM,
    fromYM: ball.yM,
    alongRad: cutRad,
    distanceM: target.distanceM,
  });
  return crossing === null ? 'short' : crossing.rightM / (target.mouthM / 2 - kit.ballRadiusM);
}
