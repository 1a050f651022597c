import { describe, expect, it } from 'vitest';
import { restingAt } from '../../../../src/engine/ball/ball-state';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { roll } from '../../../../src/engine/motion/roll';
import { ballAt } from '../../../../src/engine/table/ball-at';
import type { BallRun } from '../../../../src/engine/table/table-play';

const R = DEFAULT_KIT.ballRadiusM;
const from = { xM: 0.1, yM: 0.2 };

// From 0.4 m/s at 0.0980665 m/s² (μ_r 0.01) a ball rolls 0.4²/(2·0.0980665) m in 4.0789 s.
const rolled = roll({ ...restingAt(0.1, 0.2), vy: 0.4, wx: -0.4 / R, wz: 50 }, 1, DEFAULT_KIT);
const run: BallRun = { from, phases: [rolled], outcome: { kind: 'rests', ...from } };

describe('a ball at a time', () => {
  it('lies where it was laid before it moves', () => {
    expect(ballAt(run, 0.5)).toEqual(restingAt(0.1, 0.2));
  });

  it('is on its way during a phase', () => {
    expect(ballAt(run, 2)?.yM).toBeCloseTo(0.2 + 0.4 - 0.0980665 / 2, 12);
  });

  it('lies still where the last phase ended, its spin on the spot dying at 10 rad/s²', () => {
    const still = ballAt(run, 1 + rolled.durationS + 0.5);
    expect(still?.yM).toBeCloseTo(0.2 + 0.4 ** 2 / (2 * 0.0980665), 12);
    expect(still).toMatchObject({ vx: 0, vy: 0, wx: 0, wy: 0 });
    expect(still?.wz).toBeCloseTo(50 - 10 * (rolled.durationS + 0.5), 9);
    expect(ballAt(run, 30)?.wz).toBe(0);
  });

  it('is nowhere once it has been pocketed', () => {
    const gone: BallRun = { ...run, outcome: { kind: 'pocketed', pocket: 'far-left', timeS: 2 } };
    expect(ballAt(gone, 1.9)).not.toBeNull();
    expect(ballAt(gone, 2)).toBeNull();
  });
});
