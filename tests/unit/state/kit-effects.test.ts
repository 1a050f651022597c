import { describe, expect, it } from 'vitest';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { kitEffects } from '../../../src/state/kit-effects';
import { thrownAngleRad } from '../../../src/state/thrown-angle';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';
import { degreesOf } from '../../../src/units/angle-degrees';
import { answerTo, fakeSolve } from './open-shot';

describe('what a kit does', () => {
  it('is about two and a half degrees of squirt with an ordinary cue, less with a lighter end', () => {
    const squirtDeg = (massRatio: number) =>
      degreesOf(kitEffects({ ...DEFAULT_KIT, massRatio }, fakeSolve).squirtRad);
    expect(squirtDeg(22)).toBeGreaterThan(2.3);
    expect(squirtDeg(22)).toBeLessThan(2.7);
    expect(squirtDeg(50)).toBeLessThan(squirtDeg(22) / 1.8);
  });

  it('is more swerve on a cloth with more friction, and more throw with dirtier balls', () => {
    const plain = kitEffects(DEFAULT_KIT, solveAim);
    const rough = kitEffects({ ...DEFAULT_KIT, slideFriction: 0.3 }, solveAim);
    const { a, b, c } = DEFAULT_KIT.ballFriction;
    const dirty = kitEffects(
      { ...DEFAULT_KIT, ballFriction: { a: a * 1.5, b: b * 1.5, c } },
      solveAim,
    );
    expect(rough.swerveRad).toBeGreaterThan(plain.swerveRad ?? Number.NaN);
    expect(dirty.throwRad).toBeGreaterThan(plain.throwRad ?? Number.NaN);
  });

  it('is left out where the example has no answer', () => {
    const refusal = { ok: false, reason: 'misses' } as const;
    const effects = kitEffects(DEFAULT_KIT, () => refusal);
    expect(effects.swerveRad).toBeNull();
    expect(effects.throwRad).toBeNull();
  });
});

describe('the thrown angle', () => {
  it('is how far the object ball leaves off the line of centres, right plus', () => {
    const answer = answerTo(DEFAULT_SHOT);
    const arrival = { ...answer.arrival, directionRad: 0.1, cutRad: 0.3 };
    const objectBall = { speedMps: 1, directionRad: 0.35 };
    expect(thrownAngleRad({ ...answer, arrival, objectBall })).toBeCloseTo(-0.05, 12);
  });

  it('is none of a ball that stays', () => {
    const objectBall = { speedMps: 0, directionRad: null };
    expect(thrownAngleRad({ ...answerTo(DEFAULT_SHOT), objectBall })).toBeNull();
  });
});
