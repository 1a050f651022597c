import { describe, expect, it } from 'vitest';
import { type BallState, slipX, slipY } from '../../../../src/engine/ball/ball-state';
import {
  endState,
  newPlace,
  type Phase,
  placeAt,
  stateAt,
} from '../../../../src/engine/motion/phase';
import { seededRandom } from '../../../harness/seeded-random';
import { anyKit, anyPhase } from '../ball/random-balls';

const MOTIONS = ['sliding', 'rolling', 'flying'] as const;

const placeOf = (phase: Phase, timeS: number) => {
  const place = newPlace();
  placeAt(phase, timeS, place);
  return place;
};

/** The largest difference between two states, each kind of quantity in its own size. */
function gapOf(a: BallState, b: BallState, radiusM: number): number {
  const spins = [a.wx - b.wx, a.wy - b.wy, a.wz - b.wz].map((spin) => spin * radiusM);
  const rest = [a.xM - b.xM, a.yM - b.yM, a.zM - b.zM, a.vx - b.vx, a.vy - b.vy, a.vz - b.vz];
  return Math.max(...[...spins, ...rest].map(Math.abs));
}

describe.each([0, 0.008])('a phase on a bed tilted up to %d', (slope) => {
  const phases = (count: number, motion: (typeof MOTIONS)[number]) => {
    const random = seededRandom(count + MOTIONS.indexOf(motion));
    return Array.from({ length: count }, () => anyPhase(random, motion, anyKit(random, slope)));
  };

  it.each(MOTIONS)('%s: begins in the state it is given', (motion) => {
    for (const phase of phases(200, motion)) {
      expect(gapOf(stateAt(phase, 0), phase.start, phase.radiusM)).toBeLessThan(1e-12);
    }
  });

  it.each(MOTIONS)('%s: ends as its end state tells', (motion) => {
    for (const phase of phases(200, motion)) {
      const [end, at] = [endState(phase), stateAt(phase, phase.durationS)];
      expect(gapOf(end, at, phase.radiusM)).toBeLessThan(1e-9);
      expect(end.zM).toBe(0);
    }
  });

  it.each(MOTIONS)('%s: its velocity is the slope of its position', (motion) => {
    for (const phase of phases(200, motion)) {
      const middleS = 0.45 * phase.durationS;
      const step = 1e-5 * phase.durationS;
      const [before, now, after] = [-step, 0, step].map((by) => placeOf(phase, middleS + by));
      if (before === undefined || now === undefined || after === undefined) throw new Error();
      const size = 1 + Math.hypot(now.vx, now.vy, now.vz);
      expect(Math.abs((after.xM - before.xM) / (2 * step) - now.vx) / size).toBeLessThan(1e-6);
      expect(Math.abs((after.yM - before.yM) / (2 * step) - now.vy) / size).toBeLessThan(1e-6);
      expect(Math.abs((after.zM - before.zM) / (2 * step) - now.vz) / size).toBeLessThan(1e-6);
    }
  });

  it.each(MOTIONS)('%s: accelerates within the bound it gives', (motion) => {
    for (const phase of phases(100, motion)) {
      for (let share = 0.02; share < 0.99; share += 0.07) {
        const step = 1e-4 * phase.durationS;
        const a = placeOf(phase, share * phase.durationS);
        const b = placeOf(phase, share * phase.durationS + step);
        const change = Math.hypot(b.vx - a.vx, b.vy - a.vy, b.vz - a.vz) / step;
        expect(change).toBeLessThan(phase.accelerationBound * (1 + 1e-6) + 1e-9);
      }
    }
  });

  it('sliding: ends without slip, and keeps angular momentum about the line it slides on', () => {
    for (const phase of phases(200, 'sliding')) {
      const [end, { radiusM }] = [endState(phase), phase];
      expect(Math.hypot(slipX(end, radiusM), slipY(end, radiusM))).toBeLessThan(1e-12);
      // R v + (2/5) R² ω × ẑ changes by the pull of the tilt alone. Exact.
      const about = (ball: BallState) => [
        ball.vx + 0.4 * radiusM * ball.wy,
        ball.vy - 0.4 * radiusM * ball.wx,
      ];
      const [ax, ay] = about(phase.start);
      const [bx, by] = about(end);
      expect((bx ?? 0) - (ax ?? 0) - phase.freeX * phase.durationS).toBeCloseTo(0, 9);
      expect((by ?? 0) - (ay ?? 0) - phase.freeY * phase.durationS).toBeCloseTo(0, 9);
    }
  });

  it('rolling: stays without slip and ends at rest', () => {
    for (const phase of phases(200, 'rolling')) {
      const middle = stateAt(phase, 0.6 * phase.durationS);
      expect(slipX(middle, phase.radiusM)).toBeCloseTo(0, 12);
      expect(slipY(middle, phase.radiusM)).toBeCloseTo(0, 12);
      const { vx, vy, wx, wy } = endState(phase);
      expect([vx, vy, wx, wy]).toEqual([0, 0, 0, 0]);
    }
  });

  it('flying: keeps its spin, never dips below the bed and lands as fast as energy says', () => {
    for (const phase of phases(200, 'flying')) {
      const end = stateAt(phase, phase.durationS);
      const { wx, wy, wz } = phase.start;
      expect([end.wx, end.wy, end.wz]).toEqual([wx, wy, wz]);
      expect(end.vz).toBeCloseTo(-phase.start.vz, 9);
      for (let share = 0; share <= 1; share += 0.05) {
        expect(placeOf(phase, share * phase.durationS).zM).toBeGreaterThanOrEqual(0);
      }
    }
  });
});

describe('spin about the vertical', () => {
  it.each(['sliding', 'rolling'] as const)(
    'dies at its rate while %s, and stays dead',
    (motion) => {
      const random = seededRandom(9);
      for (let count = 0; count < 100; count++) {
        const phase = anyPhase(random, motion, anyKit(random));
        for (const share of [0.3, 1]) {
          const timeS = share * phase.durationS;
          const left = Math.max(0, Math.abs(phase.start.wz) - phase.spinDecay * timeS);
          expect(stateAt(phase, timeS).wz).toBeCloseTo(Math.sign(phase.start.wz) * left, 9);
        }
      }
    },
  );
});
