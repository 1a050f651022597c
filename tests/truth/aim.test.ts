import { describe, expect, it } from 'vitest';
import { playAim } from '../../src/engine/direct/play-aim';
import type { AimAnswer, AimResult, Shot } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { frictionlessBalls, NO_SQUIRT } from '../harness/idealised-kits';

const RAD = Math.PI / 180;
const R = DEFAULT_KIT.ballRadiusM;

const PLAIN: Shot = {
  distanceM: 1,
  cutRad: 0,
  side: 0,
  height: 0,
  elevationRad: 0,
  speedMps: 2,
};

function answered(result: AimResult): AimAnswer {
  if (!result.ok) throw new Error(result.reason);
  return result;
}

const solved = (shot: Partial<Shot>, kit: Kit = DEFAULT_KIT) =>
  answered(solveAim({ ...PLAIN, ...shot }, kit));

describe('the aim', () => {
  it('is the ghost ball itself when nothing squirts, curves or throws', () => {
    const answer = solved({ cutRad: 30 * RAD }, frictionlessBalls(1));
    expect(answer.aimRad).toBeCloseTo(0, 9);
    expect(answer.aimOffsetM).toBeCloseTo(0, 9);
    expect(answer.aimOnObjectBallM).toBeCloseTo(-2 * R * Math.sin(30 * RAD), 9);
  });

  it('passes half a ball width outside the centre line for a half-ball cut', () => {
    // Source: at 30° the ghost ball covers half of the object ball. Exact.
    const answer = solved({ cutRad: 30 * RAD }, frictionlessBalls(1));
    expect(answer.aimOnObjectBallM / (2 * R)).toBeCloseTo(-0.5, 9);
  });

  it('points the side the ball is pushed back from: left side squirts it right', () => {
    const answer = solved({ side: -0.4, speedMps: 4, cutRad: 20 * RAD });
    expect(answer.parts.squirtRad).toBeLessThan(0);
    expect(answer.parts.swerveRad).toBeGreaterThanOrEqual(0);
  });

  it('shifts the stick by side times ball and tip radius, and by what the aim adds', () => {
    const answer = solved({ side: 0.3 });
    const shift = 0.3 * (R + DEFAULT_KIT.tipRadiusM);
    expect(answer.stickOffsetM).toBeCloseTo(
      answer.aimOffsetM + shift / Math.cos(answer.aimRad),
      12,
    );
  });

  it('names a bridge from which a pivot gives both aim and shift', () => {
    const answer = solved({ side: -0.4, cutRad: 24 * RAD, distanceM: 1.15, speedMps: 1.8 });
    const bridge = answer.pivotBridgeM ?? Number.NaN;
    // Source: plane geometry of a turn about the bridge. Exact.
    expect((bridge + R) * Math.sin(answer.aimRad)).toBeCloseTo(
      -0.4 * (R + DEFAULT_KIT.tipRadiusM),
      12,
    );
    expect(solved({ cutRad: 24 * RAD }).pivotBridgeM).toBeNull();
  });
});

// Source: common practice, no source. Signs and orders only.
describe('facts of the trade', () => {
  const cutRight = (shot: Partial<Shot>) => ({ distanceM: 1.8, cutRad: 35 * RAD, ...shot });

  it('outside side, soft and far: too slow hits thin, too fast hits full', () => {
    const shot = { ...PLAIN, ...cutRight({ side: -0.4, elevationRad: 5 * RAD, speedMps: 1.5 }) };
    const { aimRad, arrival } = answered(solveAim(shot, DEFAULT_KIT));
    const lineOf = (speedMps: number) => {
      const played = answered(playAim({ ...shot, speedMps }, DEFAULT_KIT, aimRad)).arrival;
      return played.directionRad + played.cutRad;
    };
    const line = arrival.directionRad + arrival.cutRad;
    expect(lineOf(1.35)).toBeGreaterThan(line);
    expect(lineOf(1.65)).toBeLessThan(line);
  });

  it('a raised drag shot with much inside is aimed well outside the ghost ball, and cuts less', () => {
    const drag = cutRight({ side: 0.35, height: -0.3, elevationRad: 12 * RAD, speedMps: 1.6 });
    const answer = solved({ ...drag, distanceM: 1.2 });
    const plain = solved({ ...drag, distanceM: 1.2, side: 0, height: 0, elevationRad: 0 });
    expect(answer.aimOffsetM).toBeLessThan(-R / 2);
    expect(answer.arrival.cutRad).toBeLessThan(plain.arrival.cutRad);
  });

  it('above 30° of cut, a thin hit leaves the cue ball more speed and turns it less', () => {
    const shot = { ...PLAIN, ...cutRight({ cutRad: 45 * RAD }) };
    const { aimRad } = answered(solveAim(shot, DEFAULT_KIT));
    const thin = answered(playAim(shot, DEFAULT_KIT, aimRad - 0.15 * RAD)).cueBall;
    const full = answered(playAim(shot, DEFAULT_KIT, aimRad + 0.15 * RAD)).cueBall;
    expect(thin.speedMps).toBeGreaterThan(full.speedMps);
    expect(Math.abs(thin.rollingDirectionRad ?? 9)).toBeLessThan(
      Math.abs(full.rollingDirectionRad ?? 0),
    );
  });

  it('drag lets the same arrival be hit harder, and a tilted table then matters less', () => {
    const tilted = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0, rightM_per_M: 0.002 } };
    const drag = { distanceM: 2, height: -0.4, speedMps: 2.2 };
    const dragged = solved(drag);
    let rollSpeed = 1;
    for (let round = 0; round < 60; round++) {
      const arrives = solved({ distanceM: 2, height: 0.4, speedMps: rollSpeed }).arrival.speedMps;
      rollSpeed *= dragged.arrival.speedMps / arrives;
    }
    expect(drag.speedMps).toBeGreaterThan(1.1 * rollSpeed);
    expect(dragged.arrival.motion).toBe('rolling');
    const rolled = { distanceM: 2, height: 0.4, speedMps: rollSpeed };
    expect(Math.abs(solved(drag, tilted).aimRad)).toBeLessThan(
      Math.abs(solved(rolled, tilted).aimRad),
    );
  });

  it('long side is mostly squirt level and fast, mostly swerve raised and soft, and balances between', () => {
    const far = { distanceM: 2, side: 0.4 };
    const fast = solved({ ...far, elevationRad: 1 * RAD, speedMps: 4.5 }).parts;
    const soft = solved({ ...far, elevationRad: 10 * RAD, speedMps: 1.2 }).parts;
    expect(Math.abs(fast.squirtRad)).toBeGreaterThan(3 * Math.abs(fast.swerveRad));
    expect(Math.abs(soft.swerveRad)).toBeGreaterThan(1.5 * Math.abs(soft.squirtRad));
    const sums = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5].map((speedMps) => {
      const { squirtRad, swerveRad } = solved({ ...far, elevationRad: 6 * RAD, speedMps }).parts;
      return squirtRad + swerveRad;
    });
    expect(Math.min(...sums)).toBeLessThan(0);
    expect(Math.max(...sums)).toBeGreaterThan(0);
  });

  it('outside cuts down on throw; inside adds to it until the slip is so fast that friction falls', () => {
    const throwAt = (side: number, speedMps = 0.8) => {
      const answer = solved({ distanceM: 0.2, cutRad: 12 * RAD, side, speedMps }, NO_SQUIRT);
      const line = answer.arrival.directionRad + answer.arrival.cutRad;
      return line - (answer.objectBall.directionRad ?? Number.NaN);
    };
    expect(throwAt(-0.1)).toBeLessThan(throwAt(0));
    expect(throwAt(0.1)).toBeGreaterThan(throwAt(0));
    expect(throwAt(0.5, 4)).toBeLessThan(throwAt(0.1, 4));
  });
});
