import { describe, expect, it } from 'vitest';
import { type BallState, restingAt } from '../../src/engine/ball/ball-state';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { travel } from '../../src/engine/motion/journey';
import { endState } from '../../src/engine/motion/phase';

const R = DEFAULT_KIT.ballRadiusM;

function slideOf(ball: BallState, kit: Kit) {
  const { phases } = travel(ball, 0, kit, []);
  return phases.find((phase) => phase.motion === 'sliding');
}

describe('a sliding ball', () => {
  it('from any start rolls at (5/7) v0 + (2/7) R ω0', () => {
    // Source: Shepard 1995. Exact.
    const start: BallState = { ...restingAt(0, 0), vx: 0.7, vy: 2.1, wx: 31, wy: -12, wz: 40 };
    const slide = slideOf(start, DEFAULT_KIT);
    if (slide === undefined) throw new Error('did not slide');
    const end = endState(slide);
    expect(end.vx).toBeCloseTo((5 / 7) * 0.7 + (2 / 7) * R * -12, 12);
    expect(end.vy).toBeCloseTo((5 / 7) * 2.1 - (2 / 7) * R * 31, 12);
  });
});

describe('a rolling ball', () => {
  it('keeps its line on a level bed, whatever it spins about the vertical', () => {
    const rolling: BallState = { ...restingAt(0, 0), vy: 1, wx: -1 / R, wz: 60 };
    expect(travel(rolling, 0, DEFAULT_KIT, []).end.xM).toBe(0);
  });
});
