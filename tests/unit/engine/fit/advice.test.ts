import { describe, expect, it } from 'vitest';
import { adviceOf } from '../../../../src/engine/fit/advice';
import type { FittedShot } from '../../../../src/engine/fit/fit-kit';
import { handMadeFit, lineShot } from './hand-made-fit';

/** Where a cue's m/m_e is among the unknowns of one kit: the cue comes first. */
const MASS_RATIO = 0;

/**
 * A shot whose one reading changes by `perUnknown` with m/m_e and by `perDirection` with the
 * stroke's direction, in standard deviations of the reading.
 */
function straightShot(perUnknown: number, perDirection: number, weight = 1): FittedShot {
  return {
    asked: lineShot({}, { landingM: 0 }),
    residuals: {
      touches: [MASS_RATIO],
      readings: 1,
      at: (unknowns, strays) => [
        -perUnknown * (unknowns[MASS_RATIO] ?? 0) - perDirection * (strays[0] ?? 0),
      ],
    },
    evidence: {
      squares: 0,
      strays: [0, 0, 0, 0, 0],
      residuals: [0],
      perStray: [[perDirection, 0, 0, 0, 0]],
    },
    verdict: { cost: 0, weight, goodShare: weight },
  };
}

describe('advice on what pulls together', () => {
  const pairs = (variance: number, covariance: number) =>
    adviceOf(
      handMadeFit({
        variances: { massRatio: variance, slideFriction: variance },
        covariances: [['massRatio', 'slideFriction', covariance]],
      }),
    );

  it('names two quantities that the readings tell of, but not apart', () => {
    for (const sign of [-1, 1]) {
      expect(pairs(0.4, sign * 0.36)).toEqual([
        {
          kind: 'pull-together',
          one: { part: 'cue', owner: 'mine', quantity: 'massRatio' },
          two: { part: 'cloth', owner: 'hall', quantity: 'slideFriction' },
          correlation: expect.closeTo(sign * 0.9, 9),
        },
      ]);
    }
  });

  it('names them though neither is known much better than before', () => {
    expect(pairs(0.7, -0.69)).toHaveLength(1);
  });

  it('is silent where they are told apart well enough', () => {
    expect(pairs(0.4, 0.2)).toEqual([]);
  });

  it('is silent on the player’s own quantities', () => {
    const fit = handMadeFit({
      variances: { massRatio: 0.4, firm: 0.4 },
      covariances: [['massRatio', 'firm', 0.39]],
    });
    expect(adviceOf(fit)).toEqual([]);
  });

  it('is silent on a kit of which nothing has been read', () => {
    expect(adviceOf(handMadeFit({}))).toEqual([]);
  });
});

describe('advice on what hangs on the stroke', () => {
  const hanging = (shot: FittedShot, variance: number) =>
    adviceOf(handMadeFit({ variances: { massRatio: variance }, shots: [shot] }));

  it('tells how much surer a quantity would be, were the stray known', () => {
    // Information 1 + 4²/(1 + 3²) = 2.6 as it is, and 1 + 4² = 17 with the direction known.
    expect(hanging(straightShot(4, 3), 1 / 2.6)).toEqual([
      {
        kind: 'hangs-on-stroke',
        quantity: { part: 'cue', owner: 'mine', quantity: 'massRatio' },
        stray: 'direction',
        sdShare: expect.closeTo(Math.sqrt(2.6 / 17), 6),
      },
    ]);
  });

  it('is silent where the tape is what limits it', () => {
    // 1 + 4²/(1 + 0.5²) = 13.8 as it is, and 17 with the direction known.
    expect(hanging(straightShot(4, 0.5), 1 / 13.8)).toEqual([]);
  });

  it('is silent while next to nothing is known of the quantity', () => {
    expect(hanging(straightShot(4, 3), 0.9)).toEqual([]);
  });

  it('gives a botched shot little weight', () => {
    // 1 + 0.02 · 16/10 = 1.032 and 1 + 0.02 · 16 = 1.32: hardly surer.
    expect(hanging(straightShot(4, 3, 0.02), 0.6)).toEqual([]);
  });
});
