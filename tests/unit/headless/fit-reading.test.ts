import { describe, expect, it } from 'vitest';
import { shotsToDo } from '../../../src/engine/fit/trials/trials';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { answerFit } from '../../../src/headless/fit-answer';
import { ask, JOB, LINES } from './fit-lines';

const DEG = 180 / Math.PI;
const BED = { lengthM: 2.54, ballRadiusM: DEFAULT_KIT.ballRadiusM };

describe('what is left out of a reading', () => {
  it('is as usual in its trial: a line is firm, level and up the table', () => {
    const distances = shotsToDo(BED).flatMap(({ trial, setup }) =>
      trial === 'line' ? [setup.distanceM] : [],
    );
    const distanceM = distances[0];
    const told = { height: 0, elevationDeg: 3, headingDeg: 0, speed: 'firm', distanceM };
    expect(distanceM).toBeGreaterThan(1);
    const spelt = ask({ ...JOB, readings: LINES.map((line) => ({ ...line, ...told })) });
    expect(spelt).toEqual(ask(JOB));
  });

  it('is its place in the list, of an id', () => {
    const answer = ask({ ...JOB, readings: LINES.map(({ id, ...rest }) => rest) });
    expect(answer.readings.map(({ id }: { id: unknown }) => id)).toEqual([1, 2]);
  });

  it('sends a cut ball along the table: the cue is turned against the cut', () => {
    const cut = {
      trial: 'throw',
      side: 0,
      cutDeg: 20,
      speed: 'medium',
      read: { objectLandingM: -0.03 },
    };
    const prior = { kit: { bedSlope: { rightM_per_M: 0.001 } } };
    const expected = (more: object) =>
      ask({ ...JOB, prior, readings: [{ ...cut, ...more }] }).readings[0].expected;
    expect(expected({})).toBe(expected({ headingDeg: -20 }));
    expect(expected({})).not.toBe(expected({ headingDeg: 0 }));
  });
});

describe('a reading', () => {
  it('is expected where squirt leads, when nothing bends the path', () => {
    const lines = [0.3, -0.3].map((side) => ({
      trial: 'line',
      side,
      elevationDeg: 0,
      distanceM: 1,
      read: { landingM: 0 },
    }));
    const prior = { kit: { massRatio: 20 }, kitSd: { massRatio: 0 } };
    const { readings } = ask({ readings: lines, prior });
    // 1.76° at m/m_e 20 and 0.3 of the radius, from the closed form by hand.
    const asideM = Math.tan(1.76 / DEG);
    expect(readings[0].expected).toBeCloseTo(-asideM, 3);
    expect(readings[1].expected).toBeCloseTo(asideM, 3);
  });

  it('turned about with the cue is turned about: a slope seen from the other end', () => {
    const coast = (headingDeg: number, rightM_per_M: number, alongM_per_M: number) =>
      ask({
        ...JOB,
        prior: { kit: { bedSlope: { alongM_per_M, rightM_per_M } } },
        readings: [{ trial: 'coast', headingDeg, read: { timeS: 5.7 } }],
      }).readings[0].expected;
    expect(coast(180, 0.0003, 0.0005)).toBeCloseTo(coast(0, -0.0003, -0.0005), 6);
    expect(coast(90, 0.0005, 0.0003)).toBeCloseTo(coast(0, -0.0003, 0.0005), 6);
  });
});

describe('the line', () => {
  it('has its id back, and names that mean nothing listed by their places', () => {
    const [right, left] = LINES;
    const readings = [right, { ...left, colour: 'red', kit: { stick: 'x' } }];
    const answer = ask({ ...JOB, readings, note: 1, prior: { kit: { weight: 3 } } });
    expect(answer).toMatchObject({ id: 7, ok: true });
    expect(answer.unknown).toEqual([
      'readings[1].colour',
      'readings[1].kit.stick',
      'note',
      'prior.kit.weight',
    ]);
    expect(ask({ readings: [] }).id).toBeNull();
  });

  it('is told by its number where it is no object', () => {
    expect(JSON.parse(answerFit('[]', 9))).toMatchObject({ reason: 'malformed', line: 9 });
  });
});
