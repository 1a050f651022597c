import { describe, expect, it } from 'vitest';
import { answerLine } from '../../../src/headless/answer-line';
import { answerLearn } from '../../../src/headless/learn-answer';

const TARGET = { distanceM: 0.9, mouthM: 0.116 };
const PLAIN = { distanceM: 0.8, cutDeg: 30, side: 0, height: 0, elevationDeg: 3, speedMps: 1.8 };
const SHOT = { ...PLAIN, target: TARGET };
/** The question's, as a lookup takes it. */
const QUESTION = {
  ...PLAIN,
  cutDeg: 0,
  distanceM: 0.5525,
  target: { distanceM: 1.4, mouthM: 0.116 },
};
const learnt = (request: object) => JSON.parse(answerLearn(JSON.stringify(request), 1));
const times = (count: number, shot: object) => Array.from({ length: count }, () => shot);

describe('what is learnt of a player', () => {
  it('is nothing but what is usual where nothing is told', () => {
    const { stroke, bias, chances, next } = learnt({ id: 1 });
    // The prior's middle, and its central nine tenths: from beyond a professional to a beginner.
    expect(stroke.directionDeg.value).toBeCloseTo(0.155, 2);
    expect(stroke.directionDeg.low).toBeLessThan(0.055);
    expect(stroke.directionDeg.high).toBeGreaterThan(0.43);
    expect(Math.abs(bias.aimDeg.value)).toBeLessThan(0.01);
    expect(chances).toEqual([]);
    expect(learnt({ shots: [], ask: [next] }).chances[0].value).toBeGreaterThan(0.2);
  });

  it('is the steadier the more of ten are made, and finite at none and at all', () => {
    const answers = [0, 1, 3, 6, 10].map((made) => learnt({ made, ask: [QUESTION] }));
    const shares = answers.map(({ chances: [chance] }) => chance.value);
    expect(shares).toEqual([...shares].sort((one, other) => one - other));
    // A beginner makes about two of ten, a professional nine or ten (common practice, no source).
    expect(shares[0]).toBeLessThan(0.25);
    expect(shares.at(-1)).toBeGreaterThan(0.85);
    const lines = [0, 3, 6, 10].map((made) => learnt({ made }).stroke.lineDeg);
    for (const [index, { value, low, high }] of lines.entries()) {
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
      expect(high).toBeLessThan(5);
      if (index > 0) expect(value).toBeLessThan(lines[index - 1].value);
    }
  });

  it('is a bias on the side that shots pass by on', () => {
    const thin = learnt({ shots: times(12, { shot: SHOT, result: 'thin' }) });
    expect(thin.bias.fullDeg.value).toBeLessThan(-0.05);
    const straight = { ...SHOT, cutDeg: 0 };
    // Hit on its right, a ball straight ahead goes left.
    const left = learnt({ shots: times(12, { shot: straight, result: 'left' }) });
    expect(left.bias.aimDeg.value).toBeGreaterThan(0.05);
    expect(left.bias.fullDeg.high).toBeGreaterThan(0.05);
  });

  it('goes by where a shot was aimed, not by where it should have been', () => {
    const aimed = (aimAngleDeg: number) =>
      learnt({ shots: times(6, { shot: SHOT, aimAngleDeg, result: 'went' }) }).bias.aimDeg.value;
    const { aimAngleDeg } = JSON.parse(answerLine(JSON.stringify(SHOT), 1));
    expect(aimed(aimAngleDeg - 0.1)).toBeGreaterThan(aimed(aimAngleDeg + 0.1) + 0.05);
  });

  it('is the squirt of a cue whose shots with side all pass by on one side', () => {
    const sided = { ...SHOT, cutDeg: 0, side: 0.35, distanceM: 1.1 };
    const of = (result: string) =>
      learnt({ shots: times(8, { shot: sided, result }) }).kit.massRatio.value;
    // More squirt than is allowed for sends the cue ball left, and the object ball right.
    expect(of('right')).toBeLessThan(of('left'));
    expect(learnt({ shots: [{ shot: SHOT, result: 'went' }] }).kit).toBeUndefined();
  });

  it('takes a shot by where the balls lay as it takes the same shot told apart', () => {
    const position = {
      table: { lengthM: 2.54, widthM: 1.27 },
      balls: [
        { name: 'cue', xM: 0, yM: 0.1 },
        { name: 1, xM: 0.25, yM: 0.7 },
      ],
      play: { ball: 1, pocket: 'far-right' },
    };
    const struck = { side: 0, height: 0, elevationDeg: 3, speedMps: 1.6 };
    const { bias } = learnt({
      shots: times(6, { position, struck: { ...struck, headingDeg: 21 }, result: 'went' }),
    });
    expect(Number.isFinite(bias.aimDeg.value)).toBe(true);
    const missing = learnt({ shots: [{ position, struck, result: 'went' }] });
    expect(missing).toMatchObject({ ok: false, field: 'shots[0].struck.headingDeg' });
  });

  it('is read by a lookup too, in the place of a stroke', () => {
    const chance = (made: number) =>
      JSON.parse(answerLine(JSON.stringify({ ...SHOT, want: ['chance'], made }), 1)).chance.share;
    expect(chance(9)).toBeGreaterThan(chance(2) + 0.1);
    // As for a log without shots.
    expect(chance(7)).toBeCloseTo(learnt({ made: 7, ask: [SHOT] }).chances[0].value, 9);
    const both = { ...SHOT, want: ['chance'], made: 3, stroke: {} };
    expect(JSON.parse(answerLine(JSON.stringify(both), 1))).toMatchObject({ field: 'made' });
  });
});

describe('a log that cannot be learnt from', () => {
  it.each([
    [{ made: 11 }, 'made'],
    [{ made: '7' }, 'made'],
    [{ shots: 3 }, 'shots'],
    [{ shots: [null] }, 'shots[0]'],
    [{ shots: [{ shot: SHOT, result: 'went' }, { shot: SHOT }] }, 'shots[1].result'],
    [{ shots: [{ shot: SHOT, result: 'left' }] }, 'shots[0].result'],
    [{ shots: [{ shot: { ...SHOT, cutDeg: 0 }, result: 'thin' }] }, 'shots[0].result'],
    [{ shots: [{ shot: PLAIN, result: 'went' }] }, 'shots[0].shot.target'],
    [{ shots: [{ shot: { ...SHOT, cutDeg: 89 }, result: 'went' }] }, 'shots[0].shot'],
    [{ shots: [{ shot: SHOT, aimAngleDeg: 'x', result: 'went' }] }, 'shots[0].aimAngleDeg'],
    [{ ask: [{ ...SHOT, speedMps: 0.5 }] }, 'ask[0]'],
    [{ kit: { massRatio: -1 } }, 'kit'],
  ])('is refused by its field: %j', (request, field) => {
    const { ok, message, field: told } = learnt({ id: 9, ...request });
    expect(ok).toBe(false);
    expect(told).toBe(field);
    expect(message).not.toContain('undefined');
  });
});
