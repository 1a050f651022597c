import type { BallState } from '../ball/ball-state';
import { missOf, type Play } from '../direct/contact';
import type { Kit } from '../kit/kit';
import { travel } from '../motion/journey';
import { type Crossing, lineCrossing } from '../motion/line-crossing';
import { openingAt } from './opening';
import type { Target } from './target';

/** Why a played stroke has no miss to tell: the object ball is not touched, or stops on the way. */
export type Lost = 'untouched' | 'short';

/** How the object ball comes to its target. */
export interface Arrival {
  /** How far right of it, as a share of what the target allows: it goes while this is within ±1. */
  readonly miss: number;
  /** How fast it crosses the mouth, m/s; infinite where there is none to cross. */
  readonly speedMps: number;
}

/**
 * Where the object ball of a played stroke goes.
 *
 * @param cutRad direction of the target line, right + of the straight line
 */
export function objectBallArrival(
  played: Play,
  cutRad: number,
  target: Target,
  kit: Kit,
): Arrival | Lost {
  if (played.contact === null) return 'untouched';
  if (target.kind === 'angle') {
    const miss = missOf(played, cutRad) / target.halfAngleRad;
    return { miss, speedMps: Number.POSITIVE_INFINITY };
  }
  const crossing = mouthCrossing(played.contact.after.objectBall, cutRad, target.distanceM, kit);
  if (crossing === null) return 'short';
  const { rightM, speedMps } = crossing;
  if (target.openings === undefined) {
    return { miss: rightM / (target.mouthM / 2 - kit.ballRadiusM), speedMps };
  }
  const { midM, halfM } = openingAt(target.openings, speedMps);
  return { miss: (rightM - midM) / halfM, speedMps };
}

/** Where and how fast a ball comes through a mouth so far along its target line; null: it does not. */
export function mouthCrossing(
  ball: BallState,
  cutRad: number,
  distanceM: number,
  kit: Kit,
): Crossing | null {
  const mouth = { fromXM: ball.xM, fromYM: ball.yM, alongRad: cutRad, distanceM };
  return lineCrossing(travel(ball, 0, kit, []).phases, mouth);
}
