import { describe, expect, it } from 'vitest';
import { travel } from '../../src/engine/events/journey';
import { type BallState, restingAt } from '../../src/engine/model/ball-state';
import { STANDARD_GRAVITY } from '../../src/engine/model/gravity';
import { DEFAULT_KIT, type Kit } from '../../src/engine/model/kit';
import { endState } from '../../src/engine/model/phase';
import { strike } from '../../src/engine/model/strike';
import { NO_SQUIRT } from '../harness/idealised-kits';

const R = DEFAULT_KIT.ballRadiusM;

/** The kit whose slide is as strong under g = 9.81 as `friction` says. */
function slidingAt(friction: number, kit: Kit = NO_SQUIRT): Kit {
  return { ...kit, slideFriction: (friction * 9.81) / STANDARD_GRAVITY };
}

function level(height: number, speedMps: number, kit: Kit): BallState {
  return strike({ aimRad: 0, side: 0, height, elevationRad: 0, speedMps }, kit);
}

function slideOf(ball: BallState, kit: Kit) {
  const { phases } = travel(ball, 0, kit, []);
  return phases.find((phase) => phase.motion === 'sliding');
}

describe('a ball struck in the centre', () => {
  // Source: Shepard 1995, v_f = (5/7) v0; the figures worked from it at μ_s 0.2, g 9.81. Exact.
  it.each([
    [1, 0.1456, 0.1248],
    [2, 0.2912, 0.4993],
    [3, 0.4369, 1.1234],
    [5, 0.7281, 3.1205],
  ])('slides at %d m/s for %d s and %d m, and rolls at 5/7', (speed, seconds, metres) => {
    const kit = slidingAt(0.2);
    const slide = slideOf(level(0, speed, kit), kit);
    if (slide === undefined) throw new Error('did not slide');
    const end = endState(slide);
    expect(slide.durationS).toBeCloseTo(seconds, 4);
    expect(end.yM).toBeCloseTo(metres, 4);
    expect(end.vy).toBeCloseTo((5 / 7) * speed, 12);
  });
});

describe('a ball struck off centre, level', () => {
  it('ends at 9/7 of its speed when struck four fifths of a radius above the centre', () => {
    // Source: a textbook problem. Exact.
    const kit = slidingAt(0.2);
    const ball = level(0.8, 1, kit);
    const slide = slideOf(ball, kit);
    if (slide === undefined) throw new Error('did not slide');
    expect(endState(slide).vy).toBeCloseTo(9 / 7, 12);
  });

  it('rolls at once when struck two fifths of a radius above the centre', () => {
    // Source: Coriolis 1835. Exact.
    const kit = slidingAt(0.2);
    const { phases } = travel(level(0.4, 2, kit), 0, kit, []);
    expect(phases.map((phase) => phase.motion)).toEqual(['rolling']);
  });

  it('struck two thirds of a radius low, rolls at 5/21 after 16 v0 / (21 μ g)', () => {
    // Source: a worked textbook example. Exact.
    const kit = slidingAt(0.25);
    const speed = 2;
    const slide = slideOf(level(-2 / 3, speed, kit), kit);
    if (slide === undefined) throw new Error('did not slide');
    expect(slide.durationS).toBeCloseTo((16 * speed) / (21 * 0.25 * 9.81), 12);
    expect(endState(slide).vy).toBeCloseTo((5 / 21) * speed, 12);
  });

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
  // Source: uniform deceleration, T = √(2D / (μ_r g)), with g = 9.81. Exact.
  it.each([
    [0.005, 10.06],
    [0.01, 7.11],
    [0.015, 5.81],
    [0.02, 5.03],
  ])('at μ_r %d takes %d s to die over 2.483 m', (rollFriction, seconds) => {
    const kit = { ...DEFAULT_KIT, rollFriction: (rollFriction * 9.81) / STANDARD_GRAVITY };
    const speed = Math.sqrt(2 * rollFriction * 9.81 * 2.483);
    const rolling: BallState = { ...restingAt(0, 0), vy: speed, wx: -speed / R };
    const { end, endS } = travel(rolling, 0, kit, []);
    expect(endS).toBeCloseTo(seconds, 2);
    expect(end.yM).toBeCloseTo(2.483, 9);
  });

  it('drifts 7.14 mm per 0.1 mm/m of cross slope over a 2 m roll to rest at μ_r 0.01', () => {
    // Source: y = (5/7) s D / (2 μ_r), exact for small slopes; resistance follows the velocity.
    const slope = 0.0001;
    const kit = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0, rightM_per_M: slope } };
    const speed = Math.sqrt(2 * kit.rollFriction * STANDARD_GRAVITY * 2);
    const rolling: BallState = { ...restingAt(0, 0), vy: speed, wx: -speed / R };
    const { end } = travel(rolling, 0, kit, []);
    expect(end.xM * 1000).toBeCloseTo(7.14, 2);
  });

  it('keeps its line on a level bed, whatever it spins about the vertical', () => {
    const rolling: BallState = { ...restingAt(0, 0), vy: 1, wx: -1 / R, wz: 60 };
    expect(travel(rolling, 0, DEFAULT_KIT, []).end.xM).toBe(0);
  });
});
