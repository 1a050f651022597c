import { expect, it } from 'vitest';
import { restingAt } from '../../../../src/engine/ball/ball-state';
import { STANDARD_GRAVITY as g } from '../../../../src/engine/ball/gravity';
import { reachOf } from '../../../../src/engine/direct/play-aim';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';

it('is the slide and the roll of a ball set off without spin', () => {
  // Source: slide for v²·12/(49 μ_s g), then roll at 5/7 v for (5/7 v)²/(2 μ_r g). Exact.
  for (const speed of [0.2, 1, 3]) {
    const slides = (12 * speed * speed) / (49 * DEFAULT_KIT.slideFriction * g);
    const rolls = ((5 / 7) * speed) ** 2 / (2 * DEFAULT_KIT.rollFriction * g);
    const ball = { ...restingAt(0.3, -0.2), vx: speed * 0.6, vy: speed * 0.8 };
    expect(reachOf(ball, DEFAULT_KIT)).toBeCloseTo(slides + rolls, 12);
  }
});

it('is nothing for a ball at rest', () => {
  expect(reachOf(restingAt(1, 1), DEFAULT_KIT)).toBe(0);
});
