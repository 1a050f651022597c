import { describe, expect, it } from 'vitest';
import type { FittedShot } from '../../../../src/engine/fit/fit-kit';
import type { FitShot } from '../../../../src/engine/fit/fit-question';
import type { ShotEvidence } from '../../../../src/engine/fit/shot-evidence';
import { shotReport } from '../../../../src/engine/fit/shot-report';
import { handMadeFit, lineShot } from './hand-made-fit';
import { setup } from './trial-cases';

/** A shot as a fit leaves it, with how its readings hang on how the stroke strayed. */
function fitted(asked: FitShot, perStray: readonly number[][], goodShare = 1): FittedShot {
  const evidence: ShotEvidence = {
    squares: 0,
    strays: [0, 0, 0, 0, 0],
    residuals: perStray.map(() => 0),
    perStray,
  };
  return {
    asked,
    residuals: { touches: [], readings: perStray.length, at: () => evidence.residuals },
    evidence,
    verdict: { cost: 0, weight: goodShare, goodShare },
  };
}

const LINE = lineShot({}, { landingM: -0.02 });
const UNMOVED = [[0, 0, 0, 0, 0]];

describe('the report on a shot', () => {
  it('puts what was read beside where a stroke as meant would land', () => {
    const { id, readings } = shotReport(fitted(LINE, UNMOVED), handMadeFit({}));
    expect(id).toBe('a');
    expect(readings).toMatchObject([{ name: 'landingM', read: -0.02 }]);
    // Squirt at 0.3, m/m_e 22: tan α = 2.5·0.3·√0.91 / (23 + 2.5·0.91) = 0.028306, by hand.
    expect(readings[0]?.expected).toBeCloseTo(-0.028306, 5);
  });

  it('expects what the fit found: a cue with a stiffer end squirts it further', () => {
    const stiff = handMadeFit({ unknowns: { massRatio: -1 } });
    const expected = shotReport(fitted(LINE, UNMOVED), stiff).readings[0]?.expected;
    expect(expected).toBeLessThan(-0.03);
  });

  it('adds stroke and tape in squares, a centimetre for the tape', () => {
    const sd = (perStray: number[][], stretch = 1) =>
      shotReport(fitted(LINE, perStray), handMadeFit({ stretch })).readings[0]?.sd;
    expect(sd(UNMOVED)).toBeCloseTo(0.01, 12);
    // √(1 + 2² + 2²) = 3.
    expect(sd([[2, 0, 2, 0, 0]])).toBeCloseTo(0.03, 12);
    expect(sd([[2, 0, 2, 0, 0]], 1.5)).toBeCloseTo(0.045, 12);
  });

  it('takes an error that is a share as one of what was read', () => {
    const pivot = lineShot({ trial: 'pivot' }, { bridgeM: 0.25 });
    const { readings } = shotReport(fitted(pivot, UNMOVED), handMadeFit({}));
    expect(readings[0]?.sd).toBeCloseTo(0.12 * 0.25, 12);
  });

  it('tells only what was read, in the order of the trial', () => {
    const two = [...UNMOVED, ...UNMOVED];
    const both = lineShot({ trial: 'curve' }, { landingM: 0, timeS: 1 });
    const names = shotReport(fitted(both, two), handMadeFit({})).readings.map(({ name }) => name);
    expect(names).toEqual(['timeS', 'landingM']);
    const one = lineShot({ trial: 'curve' }, { landingM: 0 });
    expect(shotReport(fitted(one, UNMOVED), handMadeFit({})).readings).toHaveLength(1);
  });

  it('expects nothing where the ball would not get there', () => {
    const far = lineShot({ setup: setup({ distanceM: 4 }) }, { landingM: 0 });
    const slow = { ...far.shot, stroke: { ...far.shot.stroke, speedMps: 0.3 } };
    const report = { ...fitted({ ...far, shot: slow }, UNMOVED), evidence: null };
    expect(shotReport(report, handMadeFit({ stretch: 2 })).readings).toEqual([
      { name: 'landingM', read: 0, expected: null, sd: 0.02 },
    ]);
  });

  it('doubts what is rather botched than not', () => {
    const doubt = (goodShare: number) =>
      shotReport(fitted(LINE, UNMOVED, goodShare), handMadeFit({})).isDoubtful;
    expect([0.01, 0.49, 0.51, 1].map(doubt)).toEqual([true, true, false, false]);
  });
});
