import { describe, expect, it } from 'vitest';
import { fitReport } from '../../../../src/engine/fit/fit-report';
import { foresee } from '../../../../src/engine/fit/foresee';
import { lineShot, PRIOR } from './hand-made-fit';

const read = (id: string, landingM: number) => ({ ...lineShot({}, { landingM }), id });
const reports = (earlier: readonly number[], landingM: number) =>
  foresee({
    earlier: earlier.map((value, index) => read(`${index}`, value)),
    shot: read('now', landingM),
  });

describe('what was to be expected of a shot', () => {
  it('is what the kit as assumed does, before anything was read', () => {
    const [reading, ...more] = reports([], -0.06);
    expect(more).toEqual([]);
    expect(reading).toMatchObject({ name: 'landingM', read: -0.06 });
    // Squirt at 0.3, m/m_e 22: tan α = 2.5·0.3·√0.91 / (23 + 2.5·0.91) = 0.028306, by hand.
    expect(reading?.expected).toBeCloseTo(-0.028306, 5);
  });

  it('may be off by what was not known, too', () => {
    // By hand, m over 1 m: tape 0.01; direction 0.007, steady aim 0.5° 0.0087; tip 1 mm of 38 mm
    // makes 0.0025 of squirt, and the mass ratio's 36 % 0.0090: 0.0177 in squares.
    expect(reports([], -0.06)[0]?.sd).toBeCloseTo(0.0177, 3);
  });

  it('knows nothing of what was then read', () => {
    const [one] = reports([-0.04, -0.05], -0.03);
    const [other] = reports([-0.04, -0.05], -0.08);
    expect(one?.expected).toBe(other?.expected);
    expect(one?.sd).toBeCloseTo(other?.sd ?? 0, 12);
  });

  it('is nearer, and surer, the more was read before', () => {
    const none = reports([], -0.06)[0];
    const some = reports([-0.06, -0.062, -0.058], -0.06)[0];
    expect(some?.expected).toBeLessThan((none?.expected ?? 0) - 0.005);
    expect(some?.sd).toBeLessThan(none?.sd ?? 0);
  });

  it('is what the report of the earlier readings alone would expect of the same shot', () => {
    const earlier = [read('a', -0.04), read('b', -0.05)];
    const { scatter } = earlier[0] ?? lineShot({}, {});
    const report = fitReport({ shots: earlier, prior: PRIOR, scatter, aims: [], candidates: [] });
    const expected = report.shots[0]?.readings[0]?.expected;
    expect(reports([-0.04, -0.05], -0.08)[0]?.expected).toBeCloseTo(expected ?? 0, 12);
  });
});
