import { describe, expect, it } from 'vitest';
import { predictLanding } from '../../../../../src/engine/fit/trials/landing';
import { DEFAULT_KIT, type Kit } from '../../../../../src/engine/kit/kit';
import type { Stroke } from '../../../../../src/engine/stroke/stroke';
import { G, NO_SQUIRT, runOf, setup, stroke } from '../trial-cases';

const DEG = Math.PI / 180;

function landing(kit: Kit, given: Partial<Stroke>, distanceM: number) {
  const read = predictLanding(kit, stroke(given), setup({ distanceM }));
  return { landingM: read?.landingM ?? Number.NaN, timeS: read?.timeS ?? Number.NaN };
}

describe('where a lone cue ball lands', () => {
  // tan α = (5/2)β√(1−β²) / (1 + m/m_e + (5/2)(1−β²)); Shepard 2001, Cross 2008 (from memory).
  it.each([
    [20, 0.3, 1.76],
    [20, 0.5, 2.71],
    [30, 0.4, 1.59],
  ])('of a level cue is where squirt leads: m/m_e %d, side %d, %d°', (massRatio, side, degrees) => {
    const kit = { ...DEFAULT_KIT, massRatio };
    expect(landing(kit, { side }, 1).landingM).toBeCloseTo(-Math.tan(degrees * DEG), 3);
  });

  it('is where the aim leads, when struck in the middle', () => {
    expect(landing(DEFAULT_KIT, { aimRad: 0.02 }, 1.5).landingM).toBeCloseTo(
      1.5 * Math.tan(0.02),
      9,
    );
  });

  it('comes, while the ball slides, when D = vt − μ_s g t²/2', () => {
    const timeS = (2 - Math.sqrt(4 - 2 * 0.2 * G * 0.4)) / (0.2 * G);
    expect(landing(DEFAULT_KIT, { speedMps: 2 }, 0.4).timeS).toBeCloseTo(timeS, 8);
  });

  // Coriolis 1835 (from memory): tan ψ = side·sin θ / (cos θ + height), once the ball rolls.
  it.each([
    [5, 0.5, 0],
    [10, 0.4, 0.2],
    [5, 0.3, -0.3],
  ])(
    'of a cue raised %d° bends to side, by the theorem of Coriolis: %d, %d',
    (raised, side, height) => {
      const given = { side, height, elevationRad: raised * DEG };
      const [near, far] = [2.2, 2.6].map((distanceM) => landing(NO_SQUIRT, given, distanceM));
      const slope = ((far?.landingM ?? 0) - (near?.landingM ?? 0)) / 0.4;
      const { sin, cos } = Math;
      expect(slope).toBeCloseTo((side * sin(raised * DEG)) / (cos(raised * DEG) + height), 6);
    },
  );

  it('is mirrored with the tip', () => {
    const given = { height: -0.2, elevationRad: 0.2 };
    const right = landing(DEFAULT_KIT, { ...given, side: 0.3 }, 1.8);
    const left = landing(DEFAULT_KIT, { ...given, side: -0.3 }, 1.8);
    expect(left.landingM).toBeCloseTo(-right.landingM, 9);
    expect(left.timeS).toBeCloseTo(right.timeS, 9);
  });

  it('is nowhere when the ball rests before it', () => {
    const reachM = runOf(1, DEFAULT_KIT);
    const at = (distanceM: number) =>
      predictLanding(DEFAULT_KIT, stroke({ speedMps: 1 }), setup({ distanceM }));
    expect(at(reachM - 0.001)).not.toBeNull();
    expect(at(reachM + 0.001)).toBeNull();
  });
});
