import { type AimAnswer, type Shot, strokeOf } from '../engine/direct/shot';
import { directPot } from '../engine/goal/direct-pot';
import type { Target } from '../engine/goal/target';
import type { Task } from '../engine/goal/task';
import type { Kit } from '../engine/kit/kit';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import { certaintyOf } from '../engine/room/certainty';
import { chanceOf } from '../engine/room/chance';
import { type RoomWindow, type RoomWindows, roomWindows } from '../engine/room/windows';
import { type DoorRefusal, isRefusal } from './door-refusal';
import type { LookupRequest } from './parse-request';
import { parseKitSd, parsePlayer, parseTarget, parseWants } from './parse-room';

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

/** How sure an aim is hangs on no target. */
const ANYWHERE: Target = { kind: 'angle', halfAngleRad: 1 };

function taskOf({ distanceM, cutRad, objectDistanceM }: Shot, target: Target, kit: Kit): Task {
  const reach = objectDistanceM === undefined ? {} : { objectDistanceM };
  return directPot({ distanceM, cutRad, ...reach }, target, kit.ballRadiusM);
}

function forgives({ shot, kit, fields }: LookupRequest, { aimRad }: AimAnswer): object {
  const target = parseTarget(fields, kit);
  if ('ok' in target) return target;
  const task = taskOf(shot, target, kit);
  return { forgives: toldWindows(roomWindows(task, kit, strokeOf(shot, aimRad))) };
}

/** What a stroke forgives, in the request's units; null where the ball does not go to begin with. */
export function toldWindows(windows: RoomWindows | null): object | null {
  return (
    windows && {
      aimAngleDeg: inUnit(windows.aimRad, DEG_PER_RAD),
      speedMps: inUnit(windows.speedMps, 1),
      side: inUnit(windows.side, 1),
      height: inUnit(windows.height, 1),
      elevationDeg: inUnit(windows.elevationRad, DEG_PER_RAD),
    }
  );
}

/** @param scale from the engine's unit to the request's */
function inUnit({ low, high, directionPerUnit }: RoomWindow, scale: number) {
  return {
    low: { value: low.value * scale, endedBy: low.endedBy },
    high: { value: high.value * scale, endedBy: high.endedBy },
    objectBallDegPerUnit: directionPerUnit && (directionPerUnit * DEG_PER_RAD) / scale,
  };
}

function certainty({ shot, kit, fields }: LookupRequest, { aimRad }: AimAnswer): object {
  const spread = parseKitSd(fields, kit);
  if ('ok' in spread) return spread;
  const { aimSdRad, contributions, unsolved } = certaintyOf(
    taskOf(shot, ANYWHERE, kit),
    kit,
    strokeOf(shot, aimRad),
    spread,
  );
  return {
    certainty: {
      aimSdDeg: aimSdRad * DEG_PER_RAD,
      contributions: contributions.map((share) => ({
        quantity: share.quantity,
        aimSdDeg: share.aimSdRad * DEG_PER_RAD,
      })),
      unsolved,
    },
  };
}

function chance({ shot, kit, fields }: LookupRequest, { aimRad }: AimAnswer): object {
  const target = parseTarget(fields, kit);
  if ('ok' in target) return target;
  const spread = parseKitSd(fields, kit);
  if ('ok' in spread) return spread;
  const player = parsePlayer(fields, kit, spread);
  if ('ok' in player) return player;
  const task = taskOf(shot, target, kit);
  return { chance: chanceOf(task, kit, strokeOf(shot, aimRad), player.profile, player.spread) };
}
