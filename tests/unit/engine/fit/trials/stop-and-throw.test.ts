import { describe, expect, it } from 'vitest';
import { predictRunsAfter } from '../../../../../src/engine/fit/trials/stop';
import { predictObjectLanding } from '../../../../../src/engine/fit/trials/throw';
import { DEFAULT_KIT, type Kit } from '../../../../../src/engine/kit/kit';
import { G, NO_SQUIRT, runOf, setup, stroke } from '../trial-cases';

const DEG = Math.PI / 180;

/** Balls that lose nothing to each other. */
const IDEAL: Kit = { ...NO_SQUIRT, ballRestitution: 1, ballFriction: { a: 0, b: 0, c: 0 } };

describe('how far both balls run on', () => {
  it('after a full hit by a rolling ball: the one with its speed, the other with 2/7 of it', () => {
    // Struck 2/5 of the radius above the centre, a ball rolls at once.
    const gapM = 0.3;
    const v2 = 1 - 2 * 0.01 * G * gapM;
    const after = predictRunsAfter(IDEAL, stroke({ height: 0.4, speedMps: 1 }), setup({ gapM }));
    expect(after?.objectBallM).toBeCloseTo(runOf(Math.sqrt(v2), IDEAL), 5);
    const pickedUp2 = (4 / 49) * v2;
    const followM = pickedUp2 / (2 * 0.2 * G) + pickedUp2 / (2 * 0.01 * G);
    expect(after?.cueBallM).toBeCloseTo(followM, 5);
  });

  it('is nothing for a cue ball that slides into an equal one without spin, and keeps nothing', () => {
    const slippery = { ...IDEAL, slideFriction: 0.02 };
    const after = predictRunsAfter(slippery, stroke(), setup({ gapM: 0.005 }));
    expect(Math.abs(after?.cueBallM ?? 1)).toBeLessThan(1e-3);
  });

  it('is backwards for a cue ball with draw', () => {
    const after = predictRunsAfter(DEFAULT_KIT, stroke({ height: -0.45 }), setup({ gapM: 0.05 }));
    expect(after?.cueBallM).toBeLessThan(-0.1);
    expect(after?.objectBallM).toBeGreaterThan(1);
  });

  it('is not, where they do not meet', () => {
    const short = stroke({ speedMps: 0.3 });
    expect(predictRunsAfter(DEFAULT_KIT, short, setup({ gapM: 3 }))).toBeNull();
    expect(predictRunsAfter(DEFAULT_KIT, stroke({ aimRad: 0.3 }), setup({ gapM: 1 }))).toBeNull();
  });
});

describe('where the object ball lands', () => {
  const cut = (kit: Kit, cutDeg: number, speedMps = 1) =>
    predictObjectLanding(
      kit,
      stroke({ speedMps }),
      setup({ gapM: 0.005, cutRad: cutDeg * DEG, distanceM: 0.5 }),
    )?.objectLandingM ?? Number.NaN;

  it('is on the line of centres, when the balls do not rub', () => {
    for (const degrees of [-40, 0, 25]) expect(cut(IDEAL, degrees)).toBeCloseTo(0, 6);
  });

  // Stunned, e 0.95: tan = min(μ(u), (2/7)u_t/((1+e)u_n)), with μ(u) fitted to Marlow 1995 (from memory).
  it.each([
    [1, 20, 3.05],
    [1, 30, 4.15],
    [1, 45, 3.43],
    [3, 30, 1.78],
  ])('is thrown with the cue ball’s way: at %d m/s, cut %d°, by %d°', (speed, degrees, thrown) => {
    const slippery = { ...NO_SQUIRT, slideFriction: 0.02 };
    const landingM = 0.5 * Math.tan(thrown * DEG);
    expect(cut(slippery, degrees, speed)).toBeCloseTo(-landingM, 3);
    expect(cut(slippery, -degrees, speed)).toBeCloseTo(landingM, 3);
  });

  it('is to the left of a straight shot with right side, and the other way round', () => {
    const straight = (side: number) =>
      predictObjectLanding(
        NO_SQUIRT,
        stroke({ side, speedMps: 1 }),
        setup({ gapM: 0.1, distanceM: 0.5 }),
      )?.objectLandingM ?? Number.NaN;
    expect(straight(0.4)).toBeLessThan(-0.01);
    expect(straight(-0.4)).toBeCloseTo(-straight(0.4), 9);
  });

  it('is nowhere when it rests before the cushion, or is not touched', () => {
    const away = setup({ gapM: 0.1, distanceM: 4 });
    expect(predictObjectLanding(DEFAULT_KIT, stroke({ speedMps: 0.4 }), away)).toBeNull();
    expect(predictObjectLanding(DEFAULT_KIT, stroke({ aimRad: 1 }), away)).toBeNull();
  });
});
