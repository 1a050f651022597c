import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { travel } from '../motion/journey';
import { length } from '../numerics/length';
import { checkQuery } from './check-query';
import { type Play, play } from './contact';
import { describeAnswer } from './describe-answer';
import { type Layout, layoutOf } from './layout';
import { fliesOver } from './over-flight';
import { refusal } from './refusal';
import { type AimAnswer, type AimResult, type Refusal, type Shot, strokeOf } from './shot';

/** What happens at an aim (rad, right +); every expected failure is a refusal. */
export function playAim(shot: Shot, kit: Kit, aimRad: number): AimResult {
  const problem = checkQuery(shot, kit, aimRad);
  if (problem !== null) return problem;
  const layout = layoutOf(shot, kit.ballRadiusM);
  return answerPlay(shot, layout, kit, aimRad, play(strokeOf(shot, aimRad), layout, kit), []);
}

/** The answer of a stroke already played, or why there is none. */
export function answerPlay(
  shot: Shot,
  layout: Layout,
  kit: Kit,
  aimRad: number,
  played: Play,
  otherAimsRad: readonly number[],
): AimAnswer | Refusal {
  const { contact, journey, leaving } = played;
  if (!journey.complete) return refusal('no-convergence');
  if (contact === null) return missedBecause(played, layout);
  const answer = describeAnswer(shot, layout, kit, aimRad, leaving, contact, otherAimsRad);
  const wanted = shot.objectDistanceM;
  if (wanted !== undefined && reachOf(contact.after.objectBall, kit) < wanted) {
    return refusal('object-ball-cannot-reach', 'speedMps');
  }
  return answer;
}

/** Why a stroke that was played out never touched the object ball. */
function missedBecause({ journey }: Play, layout: Layout): Refusal {
  if (journey.phases.some((phase) => fliesOver(phase, layout))) return refusal('flies-over');
  const { xM, yM } = journey.end;
  return length(xM, yM) < layout.separationM - layout.reachM
    ? refusal('stops-short', 'speedMps')
    : refusal('misses', 'aimRad');
}

/** How far from its start a ball is when it comes to rest, as the crow flies, m. */
export function reachOf(ball: BallState, kit: Kit): number {
  const { end } = travel(ball, 0, kit, []);
  return length(end.xM - ball.xM, end.yM - ball.yM);
}
