import { describe, expect, it } from 'vitest';
import { type BallState, restingAt } from '../../../../src/engine/ball/ball-state';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { travel } from '../../../../src/engine/motion/journey';
import { objectBallAtRest } from '../../../../src/engine/motion/object-ball-at-rest';
import type { Obstacle } from '../../../../src/engine/motion/obstacle';
import { endState } from '../../../../src/engine/motion/phase';
import { between, seededRandom } from '../../../harness/seeded-random';
import { anyBall, anyKit } from '../ball/random-balls';

function runs(count: number, slope: number) {
  const random = seededRandom(count);
  return Array.from({ length: count }, () => {
    const kit = anyKit(random, slope);
    const ball: BallState = { ...anyBall(random), vz: between(random, -3, 1) };
    return { kit, ball, journey: travel(ball, 2, kit, []) };
  });
}

describe.each([0, 0.008])('a run with nothing in its way, bed tilted up to %d', (slope) => {
  const all = runs(400, slope);

  it('ends at rest', () => {
    for (const { journey } of all) {
      expect(journey.complete).toBe(true);
      expect(journey.met).toBeNull();
      const { vx, vy, vz, zM } = journey.end;
      expect([vx, vy, vz, zM]).toEqual([0, 0, 0, 0]);
    }
  });

  it('goes on where it left off: no gap in time, place or height', () => {
    for (const { journey } of all) {
      let [timeS, place] = [2, null as BallState | null];
      for (const phase of journey.phases) {
        expect(phase.startS).toBeCloseTo(timeS, 9);
        if (place !== null) {
          expect(phase.start.xM).toBe(place.xM);
          expect(phase.start.yM).toBe(place.yM);
          expect(phase.start.zM).toBe(place.zM);
        }
        expect(phase.durationS).toBeGreaterThan(0);
        place = endState(phase);
        timeS = phase.startS + phase.durationS;
      }
      expect(journey.endS).toBeCloseTo(timeS, 9);
    }
  });

  it('hops, then slides, then rolls, and never goes back', () => {
    const order = ['flying', 'sliding', 'rolling'];
    for (const { journey } of all) {
      const motions = journey.phases.map(({ motion }) => order.indexOf(motion));
      expect(motions).toEqual([...motions].sort((a, b) => a - b));
      expect(motions.filter((motion) => motion > 0).length).toBeLessThanOrEqual(2);
    }
  });
});

describe('travel', () => {
  const rolling: BallState = { ...restingAt(0, 0), vy: 1, wx: -1 / DEFAULT_KIT.ballRadiusM };

  it('ends at the first of several obstacles, whatever their order', () => {
    const [near, far] = [objectBallAtRest(0.02, 0.5), objectBallAtRest(0, 0.9)];
    for (const obstacles of [
      [near, far],
      [far, near],
    ]) {
      const journey = travel(rolling, 0, DEFAULT_KIT, obstacles);
      expect(journey.met).toBe(near);
      expect(journey.phases.at(-1)?.durationS).toBeCloseTo(journey.endS, 12);
      const gap = Math.hypot(0.02 - journey.end.xM, 0.5 - journey.end.yM);
      expect(gap).toBeCloseTo(2 * DEFAULT_KIT.ballRadiusM, 11);
    }
  });

  it('is over at once for a ball at rest, even a spinning one', () => {
    for (const wz of [0, 80]) {
      const journey = travel({ ...restingAt(1, 1), wz }, 5, DEFAULT_KIT, []);
      expect(journey).toMatchObject({ phases: [], met: null, endS: 5, complete: true });
    }
  });

  it('gives up on a run without end, and says so', () => {
    // A bed that gives back all of every landing.
    const trampoline = { ...DEFAULT_KIT, bedRestitution: 1 };
    const journey = travel({ ...restingAt(0, 0), vy: 1, vz: 1 }, 0, trampoline, []);
    expect(journey.complete).toBe(false);
    expect(journey.met).toBeNull();
  });

  it('asks an obstacle about each phase once', () => {
    let asked = 0;
    const onlooker: Obstacle = {
      touchTime: () => {
        asked++;
        return Number.POSITIVE_INFINITY;
      },
    };
    const { phases } = travel({ ...rolling, vz: -1 }, 0, DEFAULT_KIT, [onlooker]);
    expect(phases.length).toBeGreaterThan(3);
    expect(asked).toBe(phases.length);
  });
});
