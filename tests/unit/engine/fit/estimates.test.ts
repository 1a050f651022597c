import { describe, expect, it } from 'vitest';
import { estimatesOf } from '../../../../src/engine/fit/estimates';
import type { FitQuantity } from '../../../../src/engine/fit/fit-question';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { KIT_QUANTITIES, quantityIn } from '../../../../src/engine/kit/kit-spread';
import { type Found, handMadeFit, PRIOR } from './hand-made-fit';

const HALF = { ...PRIOR, spread: { ...PRIOR.spread, massRatio: 0.5, bedSlopeRight: 0.0004 } };

function estimate(quantity: FitQuantity, found: Found) {
  const all = estimatesOf(handMadeFit(found), [HALF]);
  return all.find((one) => one.quantity === quantity);
}

describe('an estimate', () => {
  it('of what cannot be negative is as many deviations of its logarithm off as was found', () => {
    const told = estimate('massRatio', {
      unknowns: { massRatio: 1 },
      variances: { massRatio: 0.09 },
    });
    expect(told).toMatchObject({ part: 'cue', owner: 'mine', sdBefore: 0.5 });
    // 22 e^0.5 = 36.2719, by hand.
    expect(told?.value).toBeCloseTo(36.2719, 3);
    expect(told?.sd).toBeCloseTo(0.15, 12);
  });

  it('of a slope is absolute', () => {
    const told = estimate('bedSlopeRight', {
      unknowns: { bedSlopeRight: -2 },
      variances: { bedSlopeRight: 0.25 },
    });
    expect(told?.value).toBeCloseTo(-0.0008, 12);
    expect(told?.sd).toBeCloseTo(0.0002, 12);
  });

  it('of the aim’s steady error is an angle: half a degree is one deviation', () => {
    const told = estimate('aimBias', { unknowns: { aimBias: 2 } });
    expect(told?.value).toBeCloseTo(Math.PI / 180, 12);
    expect(told).toMatchObject({ part: 'player', owner: 'player' });
  });

  it('of a speed word is a factor', () => {
    // e^0.25 = 1.284025, by hand.
    expect(estimate('firm', { unknowns: { firm: 1 } })?.value).toBeCloseTo(1.284025, 5);
    expect(estimate('soft', {})).toMatchObject({ value: 1, sd: 0.25, sdBefore: 0.25 });
  });

  it('stays what the engine takes', () => {
    expect(estimate('massRatio', { unknowns: { massRatio: -5 } })?.value).toBeGreaterThanOrEqual(2);
  });

  it('is there for every quantity of a kit and of its player', () => {
    expect(estimatesOf(handMadeFit({}), [HALF])).toHaveLength(KIT_QUANTITIES.length + 4);
  });

  it('is refused where nothing was known before of a part', () => {
    expect(() => estimatesOf(handMadeFit({}), [])).toThrow('cue mine');
  });
});

describe('a quantity as one number', () => {
  it('is as the kit has it', () => {
    expect(quantityIn(DEFAULT_KIT, 'slideFriction')).toBe(0.2);
    const tilted = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0.001, rightM_per_M: -0.002 } };
    expect(quantityIn(tilted, 'bedSlopeAlong')).toBe(0.001);
    expect(quantityIn(tilted, 'bedSlopeRight')).toBe(-0.002);
  });

  it('is, of ball friction, the coefficient at a slip of 1 m/s', () => {
    // 0.00995 + 0.108 e^(−1.088) = 0.00995 + 0.108 · 0.336889, by hand.
    expect(quantityIn(DEFAULT_KIT, 'ballFriction')).toBeCloseTo(0.046334, 5);
  });
});
