import { expect, it } from 'vitest';
import { strokeOf } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import { roomForError } from '../../../../src/engine/room/room-for-error';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';

const RAD = Math.PI / 180;
const CORNER = { kind: 'mouth', distanceM: 0.8, mouthM: 0.116 } as const;

it.each([
  [24, 0.8, 'firmer'],
  [86, 1.8, null],
  [24, 2.5, null],
] as const)('of a cut of %d° at %d m/s says what speed it wants: %s', (cutDeg, speedMps, wants) => {
  const elevationRad = 3 * RAD;
  const shot = { distanceM: 1, cutRad: cutDeg * RAD, side: 0, height: 0, elevationRad, speedMps };
  const answer = solveAim(shot, DEFAULT_KIT);
  if (!answer.ok) throw new Error(answer.reason);
  const { club } = INVENTED_PROFILES;
  const room = roomForError({
    balls: shot,
    target: CORNER,
    kit: DEFAULT_KIT,
    stroke: strokeOf(shot, answer.aimRad),
    profile: club,
    spread: UNMEASURED,
  });
  expect(room.wants).toBe(wants);
  expect(room.windows === null).toBe(speedMps < 2);
});
