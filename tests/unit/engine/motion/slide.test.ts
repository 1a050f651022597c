import { expect, it } from 'vitest';
import { type BallState, restingAt } from '../../../../src/engine/ball/ball-state';
import { STANDARD_GRAVITY as g } from '../../../../src/engine/ball/gravity';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { endState, newPlace, placeAt } from '../../../../src/engine/motion/phase';
import { slide } from '../../../../src/engine/motion/slide';

const R = DEFAULT_KIT.ballRadiusM;
const skidding: BallState = { ...restingAt(0.1, 0.2), vx: 0.5, vy: 1.5, wx: 20, wy: -30, wz: 12 };

it('lasts 2u/(7 μ g) on a level bed', () => {
  const slip = Math.hypot(0.5 + R * 30, 1.5 + R * 20);
  const { durationS } = slide(skidding, 0, DEFAULT_KIT);
  expect(durationS).toBeCloseTo((2 * slip) / (7 * 0.2 * g), 12);
});

it('is a parabola: the second differences of its points are all one', () => {
  const phase = slide(skidding, 0, DEFAULT_KIT);
  const points = [0, 1, 2, 3, 4, 5].map((step) => {
    const place = newPlace();
    placeAt(phase, (phase.durationS * step) / 5, place);
    return place;
  });
  const bends = [1, 2, 3, 4].map((at) =>
    [points[at - 1], points[at], points[at + 1]].map((point) => point?.xM ?? Number.NaN),
  );
  const seconds = bends.map(([a = 0, b = 0, c = 0]) => a - 2 * b + c);
  for (const second of seconds) expect(second).toBeCloseTo(seconds[0] ?? Number.NaN, 14);
});

it('does not feel spin about the vertical', () => {
  const plain = endState(slide({ ...skidding, wz: 0 }, 0, DEFAULT_KIT));
  const spun = endState(slide({ ...skidding, wz: 90 }, 0, DEFAULT_KIT));
  expect([spun.xM, spun.yM, spun.vx, spun.vy]).toEqual([plain.xM, plain.yM, plain.vx, plain.vy]);
});

it('tends to the level slide as the tilt goes', () => {
  const level = endState(slide(skidding, 0, DEFAULT_KIT));
  for (const [slope, digits] of [
    [1e-6, 5],
    [1e-9, 8],
    [1e-12, 11],
    [1e-300, 13],
  ] as const) {
    const kit = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: slope, rightM_per_M: -slope } };
    const tilted = endState(slide(skidding, 0, kit));
    expect(tilted.xM).toBeCloseTo(level.xM, digits);
    expect(tilted.yM).toBeCloseTo(level.yM, digits);
    expect(tilted.vx).toBeCloseTo(level.vx, digits);
  }
});
