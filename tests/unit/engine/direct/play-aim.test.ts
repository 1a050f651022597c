import { describe, expect, it } from 'vitest';
import { playAim } from '../../../../src/engine/direct/play-aim';
import type { AimAnswer, Shot } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { complaintsOf } from '../../../harness/audit-answers';
import { randomQuery } from '../../../harness/random-shots';
import { seededRandom } from '../../../harness/seeded-random';

const RAD = Math.PI / 180;
const PLAIN: Shot = {
  distanceM: 1,
  cutRad: 20 * RAD,
  side: 0.2,
  height: 0.1,
  elevationRad: 3 * RAD,
  speedMps: 2,
};

function answered(shot: Shot, aimRad: number): AimAnswer {
  const result = playAim(shot, DEFAULT_KIT, aimRad);
  if (!result.ok) throw new Error(result.reason);
  return result;
}

describe('playAim', () => {
  it('tells the very answer of the solved aim, but for the other aims', () => {
    const random = seededRandom(6);
    for (let count = 0; count < 300; count++) {
      const { shot, kit } = randomQuery(random, count % 2 === 0 ? 0 : 0.002);
      const solved = solveAim(shot, kit);
      if (!solved.ok) continue;
      expect(playAim(shot, kit, solved.aimRad)).toEqual({ ...solved, otherAimsRad: [] });
      expect(complaintsOf(solved)).toEqual([]);
    }
  });

  it('has the line of centres at the arrival plus the effective cut', () => {
    const { arrival, objectBall } = answered(PLAIN, 0);
    const line = arrival.directionRad + arrival.cutRad;
    // Friction turns the object ball off that line by a few degrees at most.
    expect(Math.abs(line - (objectBall.directionRad ?? 9))).toBeLessThan(7 * RAD);
  });

  it('measures the aim line by triangles of its own', () => {
    for (const aim of [-0.02, 0, 0.01, 0.03]) {
      const answer = answered(PLAIN, aim);
      expect(answer.aimOffsetM).toBeCloseTo(Math.tan(aim), 12);
      const R = DEFAULT_KIT.ballRadiusM;
      const [x, y] = [2 * R * Math.sin(20 * RAD), 1 + 2 * R * Math.cos(20 * RAD)];
      expect(answer.aimOnObjectBallM).toBeCloseTo(y * Math.tan(aim) - x, 12);
      // The stick runs beside the aim line, the axis shift apart, square to it.
      const shift = 0.2 * (R + DEFAULT_KIT.tipRadiusM);
      expect((answer.stickOffsetM - answer.aimOffsetM) * Math.cos(aim)).toBeCloseTo(shift, 12);
    }
  });

  it('misses beside the object ball, and says that the aim is to blame', () => {
    expect(playAim(PLAIN, DEFAULT_KIT, 0.5)).toMatchObject({ reason: 'misses', field: 'aimRad' });
  });

  it('stops short of it, and says that the speed is to blame', () => {
    const soft = { ...PLAIN, side: 0, cutRad: 0, distanceM: 4, speedMps: 0.5 };
    expect(playAim(soft, DEFAULT_KIT, 0)).toMatchObject({
      reason: 'stops-short',
      field: 'speedMps',
    });
    expect(playAim({ ...soft, speedMps: 2 }, DEFAULT_KIT, 0).ok).toBe(true);
  });

  it('flies over it', () => {
    const jump = {
      ...PLAIN,
      side: 0,
      distanceM: 0.25,
      cutRad: 0,
      elevationRad: 60 * RAD,
      speedMps: 2,
    };
    expect(playAim(jump, DEFAULT_KIT, 0)).toMatchObject({ ok: false, reason: 'flies-over' });
  });

  it('asks how far the object ball must go only when told', () => {
    const soft = { ...PLAIN, speedMps: 0.8, distanceM: 0.3 };
    const far = { ...soft, objectDistanceM: 4 };
    expect(playAim(soft, DEFAULT_KIT, 0).ok).toBe(true);
    expect(playAim(far, DEFAULT_KIT, 0)).toMatchObject({
      reason: 'object-ball-cannot-reach',
      field: 'speedMps',
    });
    expect(playAim({ ...far, objectDistanceM: 0.1 }, DEFAULT_KIT, 0).ok).toBe(true);
    expect(playAim({ ...far, speedMps: 4 }, DEFAULT_KIT, 0).ok).toBe(true);
  });
});
