import { playAim } from '../engine/direct/play-aim';
import type { AimAnswer, Heading } from '../engine/direct/shot';
import { solveAim } from '../engine/direct/solve-aim';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import { answerFields } from './answer-fields';
import { isRefusal, refused, worded } from './door-refusal';
import type { Fields } from './json-fields';
import { LOOKUP_NAMES, parseRequest } from './parse-request';
import { roomOf } from './room-of';

/**
 * Answers one line of input with one line of output, both JSON: metres, seconds and degrees, right
 * +. A line that is not a JSON object is told by its number, counted from 1.
 */
export function answerLine(line: string, lineNumber: number): string {
  return answerFields(line, lineNumber, LOOKUP_NAMES, answerOf);
}

function answerOf(fields: Fields): object {
  const request = parseRequest(fields);
  const { shot, kit, aimRad } = request;
  const result = aimRad === undefined ? solveAim(shot, kit) : playAim(shot, kit, aimRad);
  if (!result.ok) return refused(worded(result));
  const room = roomOf(request, result);
  return isRefusal(room) ? refused(room) : { ...told(result), ...room };
}

function told(answer: AimAnswer) {
  const { parts, arrival } = answer;
  return {
    ok: true,
    aimAngleDeg: answer.aimRad * DEG_PER_RAD,
    aimOffsetM: answer.aimOffsetM,
    stickOffsetM: answer.stickOffsetM,
    aimOnObjectBallM: answer.aimOnObjectBallM,
    stickOnObjectBallM: answer.stickOnObjectBallM,
    parts: {
      squirtDeg: parts.squirtRad * DEG_PER_RAD,
      swerveDeg: parts.swerveRad * DEG_PER_RAD,
      throwDeg: parts.throwRad * DEG_PER_RAD,
    },
    pivotBridgeM: answer.pivotBridgeM,
    arrival: {
      speedMps: arrival.speedMps,
      directionDeg: arrival.directionRad * DEG_PER_RAD,
      cutDeg: arrival.cutRad * DEG_PER_RAD,
      sideSpinRadS: arrival.sideSpinRadS,
      phase: arrival.motion,
      heightM: arrival.heightM,
      timeS: arrival.timeS,
    },
    objectBall: heading(answer.objectBall),
    cueBall: {
      ...heading(answer.cueBall),
      rollingDirectionDeg: degrees(answer.cueBall.rollingDirectionRad),
    },
    otherAimsDeg: answer.otherAimsRad.map((aim) => aim * DEG_PER_RAD),
  };
}

function heading({ speedMps, directionRad }: Heading) {
  return { speedMps, directionDeg: degrees(directionRad) };
}

function degrees(angleRad: number | null): number | null {
  return angleRad === null ? null : angleRad * DEG_PER_RAD;
}
