import { missOf, type Play } from '../aim/contact';
import { travel } from '../events/journey';
import type { BallState } from '../model/ball-state';
import type { Kit } from '../model/kit';
import { newPlace, type Phase, placeAt } from '../model/phase';
import { bracketedRoot } from '../numerics/bracketed-root';
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
  const rightM = crossing(played.contact.after.objectBall, cutRad, target.distanceM, kit);
  return rightM === null ? 'short' : rightM / (target.mouthM / 2 - kit.ballRadiusM);
}

/** Where the ball crosses the line square to the target line at a distance, m right; null: never. */
function crossing(ball: BallState, cutRad: number, distanceM: number, kit: Kit): number | null {
  const [sin, cos] = [Math.sin(cutRad), Math.cos(cutRad)];
  const place = newPlace();
  const beyond = (phase: Phase, timeS: number) => {
    placeAt(phase, timeS, place);
    return (place.xM - ball.xM) * sin + (place.yM - ball.yM) * cos - distanceM;
  };
  for (const phase of travel(ball, 0, kit, []).phases) {
    const atEnd = beyond(phase, phase.durationS);
    if (atEnd < 0) continue;
    const before = beyond(phase, 0);
    const end = phase.durationS;
    const at = bracketedRoot((t) => beyond(phase, t), 0, before, end, atEnd, 0, CROSSED_M);
    placeAt(phase, at.x, place);
    return (place.xM - ball.xM) * cos - (place.yM - ball.yM) * sin;
  }
  return null;
}

/** The line counts as crossed this near it, m. */
const CROSSED_M = 1e-9;
