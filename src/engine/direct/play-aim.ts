import type { BallState } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { endOfRun, runOf } from '../motion/run';
import { length } from '../numerics/length';
import { checkQuery } from './check-query';
import { type Meeting, meet } from './contact';
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
  return answerPlay(shot, layout, kit, aimRad, meet(strokeOf(shot, aimRad), layout, kit), []);
}

/** The answer of a stroke already played, or why there is none. */
export function answerPlay(
  shot: Shot,
  layout: Layout,
  kit: Kit,
  aimRad: number,
  played: Meeting,
  otherAimsRad: readonly number[],
): AimAnswer | Refusal {
  const { contact, complete, leaving } = played;
  if (!complete) return refusal('no-convergence');
  if (contact === null) return missedBecause(leaving, layout, kit);
  const answer = describeAnswer(shot, layout, kit, aimRad, leaving, contact, otherAimsRad);
  const wanted = shot.objectDistanceM;
  if (wanted !== undefined && reachOf(contact.objectBall, kit) < wanted) {
    return refusal('object-ball-cannot-reach', 'speedMps');
  }
  return answer;
}

/** Why a stroke that was played out never touched the object ball. */
function missedBecause(leaving: BallState, layout: Layout, kit: Kit): Refusal {
  const run = runOf(leaving, 0, kit);
  while (run.next()) if (fliesOver(run.phase, layout)) return refusal('flies-over');
  const { xM, yM } = run.end;
  return length(xM, yM) < layout.separationM - layout.reachM
    ? refusal('stops-short', 'speedMps')
    : refusal('misses', 'aimRad');
}

/** How far from its start a ball is when it comes to rest, as the crow flies, m. */
export function reachOf(ball: BallState, kit: Kit): number {
  const end = endOfRun(ball, kit);
  return length(end.xM - ball.xM, end.yM - ball.yM);
}
