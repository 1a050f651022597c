import { layoutOf } from '../engine/direct/layout';
import type { AimAnswer } from '../engine/direct/shot';
import { inputsOf } from '../engine/goal/held-shot';
import { certaintyOf } from '../engine/room/certainty';
import { chanceOf } from '../engine/room/chance';
import { type RoomWindow, type RoomWindows, roomWindows } from '../engine/room/windows';
import { type DoorRefusal, isRefusal } from './door-refusal';
import type { LookupRequest } from './parse-request';
import { parseKitSd, parseStroke, parseTarget, parseWants } from './parse-room';

const DEGREES = 180 / Math.PI;

/** What a request wants beside its answer, or why it cannot be had. */
export function roomOf(request: LookupRequest, answer: AimAnswer): object | DoorRefusal {
  const wants = parseWants(request.fields);
  if ('ok' in wants) return wants;
  const parts: object[] = [];
  if (wants.includes('forgives')) parts.push(forgives(request, answer));
  if (wants.includes('certainty')) parts.push(certainty(request, answer));
  if (wants.includes('chance')) parts.push(chance(request, answer));
  return parts.find(isRefusal) ?? Object.assign({}, ...parts);
}

function forgives({ shot, kit, fields }: LookupRequest, { aimRad }: AimAnswer): object {
  const target = parseTarget(fields, kit);
  if ('ok' in target) return target;
  const held = { shot, kit, target, layout: layoutOf(shot, kit.ballRadiusM) };
  return { forgives: toldWindows(roomWindows(held, inputsOf(shot, aimRad))) };
}

/** What a stroke forgives, in the request's units; null where the ball does not go to begin with. */
export function toldWindows(windows: RoomWindows | null): object | null {
  return (
    windows && {
      aimAngleDeg: inUnit(windows.aimRad, DEGREES),
      speedMps: inUnit(windows.speedMps, 1),
      side: inUnit(windows.side, 1),
      height: inUnit(windows.height, 1),
      elevationDeg: inUnit(windows.elevationRad, DEGREES),
    }
  );
}

/** @param scale from the engine's unit to the request's */
function inUnit({ low, high, directionPerUnit }: RoomWindow, scale: number) {
  return {
    low: { value: low.value * scale, endedBy: low.endedBy },
    high: { value: high.value * scale, endedBy: high.endedBy },
    objectBallDegPerUnit: directionPerUnit && (directionPerUnit * DEGREES) / scale,
  };
}

function certainty({ shot, kit, fields }: LookupRequest, { aimRad }: AimAnswer): object {
  const spread = parseKitSd(fields, kit);
  if ('ok' in spread) return spread;
  const { aimSdRad, contributions, unsolved } = certaintyOf(shot, kit, aimRad, spread);
  return {
    certainty: {
      aimSdDeg: aimSdRad * DEGREES,
      contributions: contributions.map((share) => ({
        quantity: share.quantity,
        aimSdDeg: share.aimSdRad * DEGREES,
      })),
      unsolved,
    },
  };
}

function chance({ shot, kit, fields }: LookupRequest, { aimRad }: AimAnswer): object {
  const target = parseTarget(fields, kit);
  if ('ok' in target) return target;
  const profile = parseStroke(fields);
  if ('ok' in profile) return profile;
  const spread = parseKitSd(fields, kit);
  if ('ok' in spread) return spread;
  const held = { shot, kit, target, layout: layoutOf(shot, kit.ballRadiusM) };
  return { chance: chanceOf(held, inputsOf(shot, aimRad), profile, spread) };
}
