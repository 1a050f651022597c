import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radOf } from '../../../src/units/angle-degrees';
import { ballHitOfCut, cutOfBallHit } from '../../../src/units/ball-hit';
import { cutSizeInRad, cutSizeInUnit } from '../../../src/units/cut-unit';

const cutDeg = fc.double({ min: 0, max: 90, noNaN: true });

describe('a cut as a ball hit', () => {
  it.each([
    // 1 − sin of the cut: sin 48.590° is 0.75 and sin 14.478° is 0.25, from a table of sines.
    [0, 1],
    [14.47751, 0.75],
    [30, 0.5],
    [48.59038, 0.25],
    [90, 0],
  ])('covers at %s° the share %s', (deg, share) => {
    expect(ballHitOfCut(radOf(deg))).toBeCloseTo(share, 6);
    const back = cutOfBallHit(share);
    expect(back.ok && back.value).toBeCloseTo(radOf(deg), 6);
  });

  it('covers the same either way', () => {
    fc.assert(
      fc.property(cutDeg, (deg) => {
        expect(ballHitOfCut(-radOf(deg))).toBe(ballHitOfCut(radOf(deg)));
      }),
    );
  });

  it('agrees with one less the sine', () => {
    fc.assert(
      fc.property(cutDeg, (deg) => {
        expect(ballHitOfCut(radOf(deg))).toBeCloseTo(1 - Math.sin(radOf(deg)), 14);
      }),
    );
  });

  it('comes back as the same cut to the last digits, grazes included', () => {
    fc.assert(
      fc.property(cutDeg, (deg) => {
        const back = cutOfBallHit(ballHitOfCut(radOf(deg)));
        expect(back.ok && Math.abs(back.value - radOf(deg))).toBeLessThan(1e-15);
      }),
    );
  });

  it.each([-0.01, 1.01, Number.NaN, Number.POSITIVE_INFINITY])('refuses a share of %s', (share) => {
    expect(cutOfBallHit(share)).toMatchObject({ ok: false, problem: 'out-of-domain' });
  });
});

describe('the size of a cut in the chosen unit', () => {
  it('is its degrees without direction', () => {
    expect(cutSizeInUnit(radOf(-24), 'degrees')).toBeCloseTo(24, 12);
    expect(cutSizeInRad(24, 'degrees')).toEqual({ ok: true, value: radOf(24) });
  });

  it('is its ball hit', () => {
    expect(cutSizeInUnit(radOf(-30), 'ball-hit')).toBeCloseTo(0.5, 12);
    const half = cutSizeInRad(0.5, 'ball-hit');
    expect(half.ok && half.value).toBeCloseTo(radOf(30), 12);
  });

  it.each([-1, 90.1, Number.NaN])('refuses %s degrees', (deg) => {
    const refusal = cutSizeInRad(deg, 'degrees');
    expect(refusal.ok).toBe(false);
    expect(!refusal.ok && refusal.message).toMatch(/90°/);
  });
});
