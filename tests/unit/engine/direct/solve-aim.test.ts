import { describe, expect, it } from 'vitest';
import { playAim } from '../../../../src/engine/direct/play-aim';
import type { AimAnswer, Shot } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import { between, seededRandom } from '../../../harness/seeded-random';

const RAD = Math.PI / 180;
/** The object ball leaves along the target line within this, rad: 0.001°. */
const GOES = 0.001 * RAD;

function answered(shot: Shot, kit: Kit): AimAnswer {
  const result = solveAim(shot, kit);
  if (!result.ok) throw new Error(`${result.reason}: ${result.reason}`);
  return result;
}

function expectGoes(shot: Shot, kit: Kit): AimAnswer {
  const answer = answered(shot, kit);
  const played = playAim(shot, kit, answer.aimRad);
  if (!played.ok) throw new Error(played.reason);
  expect(Math.abs((played.objectBall.directionRad ?? 9) - shot.cutRad)).toBeLessThan(GOES);
  return answer;
}

const tilted = (alongM_per_M: number, rightM_per_M: number, kit: Kit = DEFAULT_KIT): Kit => ({
  ...kit,
  bedSlope: { alongM_per_M, rightM_per_M },
});

const RAISED: Shot = {
  distanceM: 1,
  cutRad: 0.4,
  side: 0.3,
  height: -0.1,
  elevationRad: 0.2,
  speedMps: 1.5,
};

describe('solveAim', () => {
  it.each([-0.45, -0.4, -0.1, 0, 0.1, 0.4, 0.45])(
    'refuses a cut of 89° with side %d as too thin',
    (side) => {
      for (const speedMps of [0.5, 1.8, 3.4, 4.5]) {
        for (const cutRad of [89 * RAD, -89 * RAD]) {
          const shot = {
            distanceM: 1.15,
            cutRad,
            side,
            height: 0,
            elevationRad: 3 * RAD,
            speedMps,
          };
          expect(solveAim(shot, DEFAULT_KIT)).toMatchObject({ ok: false, reason: 'too-thin' });
        }
      }
    },
  );

  it('points ahead: never past a right angle off the straight line', () => {
    const random = seededRandom(90);
    for (let count = 0; count < 1500; count++) {
      const shot: Shot = {
        distanceM: between(random, 0.005, 0.02),
        cutRad: (random() < 0.5 ? -1 : 1) * between(random, 1.3, Math.PI / 2),
        side: between(random, -0.3, 0.3),
        height: between(random, -0.3, 0.3),
        elevationRad: between(random, 0, 0.8),
        speedMps: between(random, 0.02, 3),
      };
      const result = solveAim(shot, DEFAULT_KIT);
      if (!result.ok) continue;
      for (const aim of [result.aimRad, ...result.otherAimsRad]) {
        expect(Math.abs(aim)).toBeLessThanOrEqual(Math.PI / 2);
      }
    }
  });

  it('knows an aim that only shoots backwards for none', () => {
    const shot: Shot = {
      distanceM: 0.005,
      cutRad: 1.5,
      side: 0.02,
      height: -0.19,
      elevationRad: 0.67,
      speedMps: 0.1,
    };
    expect(solveAim(shot, DEFAULT_KIT).ok).toBe(false);
  });

  // The object ball’s direction dips through the target line and back between two nearby contacts.
  it.each<[number, number, number, number, number]>([
    [0.0074, 0.01, 0.04, 0.15, 4.2],
    [0.0071, -0.007, 0.04, 0.37, 0.8],
  ])('finds the smallest aim of a shot from %d m, cut %d', (distanceM, cutRad, height, up, v) => {
    const shot: Shot = {
      distanceM,
      cutRad,
      side: distanceM === 0.0071 ? -0.01 : 0,
      height,
      elevationRad: up,
      speedMps: v,
    };
    const { aimRad } = expectGoes(shot, DEFAULT_KIT);
    expect(Math.abs(aimRad)).toBeLessThan(0.13);
  });

  it('finds the aim of a thin cut with balls that rub hard, where gearing turns the throw', () => {
    const ballFriction = { a: 0, b: 0.5, c: 1 };
    const shot: Shot = {
      distanceM: 1.533,
      cutRad: 1.294,
      side: -0.36,
      height: 0.28,
      elevationRad: 0.27,
      speedMps: 2.4,
    };
    expect(expectGoes(shot, { ...DEFAULT_KIT, ballFriction }).aimRad).toBeCloseTo(0.043, 3);
  });

  it('finds the aim of a massé across a steep bed', () => {
    const shot: Shot = {
      distanceM: 0.291,
      cutRad: -72.3 * RAD,
      side: -0.289,
      height: -0.249,
      elevationRad: 74.69 * RAD,
      speedMps: 0.315,
    };
    const answer = expectGoes(shot, tilted(0.009673616085495175, 0.002533999177278677));
    expect(answer.aimRad / RAD).toBeGreaterThan(60);
  });

  it('finds the aim of a ball that dies by the object ball on a tilted bed', () => {
    const shot: Shot = {
      distanceM: 2.9931,
      cutRad: 9.65 * RAD,
      side: -0.351,
      height: 0.219,
      elevationRad: 2.47 * RAD,
      speedMps: 0.962,
    };
    const answer = solveAim(shot, tilted(-0.002478661423853144, 0.002352218474907329));
    // Whether this speed just reaches is a matter of millimetres a second; a little more does.
    expect(answer.ok || answer.reason === 'stops-short').toBe(true);
    expectGoes({ ...shot, speedMps: 0.98 }, tilted(-0.002478661423853144, 0.002352218474907329));
  });

  it('stays sound up to the tilt on which nothing stops', () => {
    const shot = RAISED;
    const slow = { ...DEFAULT_KIT, rollFriction: 0.005 };
    for (const share of [0.5, 0.9, 0.99, 0.999, 0.9998]) {
      expectGoes(shot, tilted(0, 0.007 * share, slow));
      expectGoes(shot, tilted(0.007 * share, 0, slow));
    }
    for (const share of [1, 1 - 2 ** -52, 1 + 2 ** -52]) {
      const way = { x: Math.cos(0.7) * 0.007 * share, y: Math.sin(0.7) * 0.007 * share };
      expect(solveAim(shot, tilted(way.x, way.y, slow))).toMatchObject({ reason: 'never-stops' });
    }
  });

  it('tends to the level aim as the tilt goes, down to the last double', () => {
    const shot = RAISED;
    const level = answered(shot, DEFAULT_KIT).aimRad;
    for (const slope of [1e-12, 1e-100, 1e-160, 1e-310, 5e-324]) {
      expect(answered(shot, tilted(slope, slope)).aimRad).toBeCloseTo(level, 10);
    }
  });

  it('answers a graze as near as its first touch can be told', () => {
    const shot: Shot = {
      distanceM: 2.9107215199203793,
      cutRad: 1.5161092865332566,
      side: 0.005458384824664509,
      height: 0.11722124440931773,
      elevationRad: 0.3749095748061824,
      speedMps: 1.3764105417104018,
    };
    expectGoes(shot, DEFAULT_KIT);
  });
});
