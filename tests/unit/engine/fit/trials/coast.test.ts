import { describe, expect, it } from 'vitest';
import { predictCoast } from '../../../../../src/engine/fit/trials/coast';
import { DEFAULT_KIT } from '../../../../../src/engine/kit/kit';
import { setup, stroke } from '../trial-cases';

const timeS = (rollFriction: number, along: number, distanceM = 2.483) => {
  const bedSlope = { alongM_per_M: along, rightM_per_M: 0.0003 };
  const kit = { ...DEFAULT_KIT, rollFriction, bedSlope };
  return predictCoast(kit, stroke(), setup({ distanceM }))?.timeS ?? null;
};

describe('a coasting ball', () => {
  // √(2D/μ_r g), worked out.
  it.each([
    [0.005, 10.06],
    [0.01, 7.11],
    [0.015, 5.81],
    [0.02, 5.03],
  ])('on a level bed with roll friction %d rests after %d s', (friction, seconds) => {
    expect(timeS(friction, 0)).toBeCloseTo(seconds, 1);
  });

  it('takes twice as long for four times as far', () => {
    expect(timeS(0.01, 0, 2)).toBeCloseTo(2 * (timeS(0.01, 0, 0.5) ?? Number.NaN), 12);
  });

  it('takes longer downhill, as on a cloth that holds less by 5/7 of the slope', () => {
    expect(timeS(0.01, 0.0007)).toBeCloseTo(timeS(0.0095, 0) ?? Number.NaN, 12);
    expect(timeS(0.01, -0.0007)).toBeCloseTo(timeS(0.0105, 0) ?? Number.NaN, 12);
  });

  it('never rests where the bed gives back all that the cloth takes', () => {
    expect(timeS(0.005, 0.0071)).toBeNull();
    expect(timeS(0.005, 0.0069)).toBeGreaterThan(50);
  });

  it('does not hang on who pushed it, nor how hard', () => {
    const at = (speedMps: number) =>
      predictCoast(DEFAULT_KIT, stroke({ speedMps, side: 0.3 }), setup({ distanceM: 1 }));
    expect(at(0.5)).toEqual(at(2));
  });
});
