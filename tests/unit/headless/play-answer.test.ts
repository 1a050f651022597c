import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { answerPlay } from '../../../src/headless/play-answer';

const ask = (fields: object, line = 1) => JSON.parse(answerPlay(JSON.stringify(fields), line));

/** Invented: a ball straight in front of the cue ball, and another far off. */
const REQUEST = {
  id: 5,
  table: { lengthM: 2.54, widthM: 1.27 },
  balls: [
    { name: 3, xM: -0.1, yM: 0 },
    { name: 'cue', xM: -0.4, yM: 0 },
    { name: 9, xM: 0.3, yM: -1 },
  ],
  stroke: { headingDeg: 90, side: 0, height: 0, elevationDeg: 0, speedMps: 1.5 },
};

interface Told {
  readonly name: string | number;
  readonly outcome: { readonly kind: string; readonly pocket?: string };
  readonly path: readonly { readonly timeS: number; readonly xM: number; readonly yM: number }[];
}

const ballIn = (answer: { balls: readonly Told[] }, name: string | number): Told => {
  const found = answer.balls.find((ball) => ball.name === name);
  if (found === undefined) throw new Error(`no ball ${name}`);
  return found;
};

describe('a stroke played on a table', () => {
  const answer = ask(REQUEST);

  it('tells what becomes of every ball, by name', () => {
    expect(answer).toMatchObject({ id: 5, ok: true, complete: true });
    // Straight at the middle pocket: the ball falls, and the cue ball runs on after it or stays.
    expect(ballIn(answer, 3).outcome).toMatchObject({ kind: 'pocketed', pocket: 'middle-right' });
    expect(ballIn(answer, 9).outcome).toEqual({ kind: 'rests', xM: 0.3, yM: -1 });
    expect(ballIn(answer, 9).path).toEqual([
      { timeS: 0, xM: 0.3, yM: -1, heightM: 0, motion: null },
    ]);
  });

  it('tells the corners of a path in the order of time, from where the ball lay', () => {
    const { path } = ballIn(answer, 'cue');
    expect(path[0]).toMatchObject({ timeS: 0, xM: -0.4, yM: 0 });
    const times = path.map(({ timeS }) => timeS);
    expect([...times].sort((a, b) => a - b)).toEqual(times);
    expect(path.length).toBeGreaterThan(2);
  });

  it('tells events by the balls’ names', () => {
    const [hit] = answer.events.filter(({ kind }: { kind: string }) => kind === 'hits-ball');
    expect(hit).toMatchObject({ ball: 'cue', other: 3 });
    expect(hit.xM).toBeCloseTo(-0.1 - 2 * DEFAULT_KIT.ballRadiusM, 9);
    const [fall] = answer.events.filter(({ kind }: { kind: string }) => kind === 'pocketed');
    expect(fall).toMatchObject({ ball: 3, pocket: 'middle-right' });
  });
});

describe('a stroke that cannot be played', () => {
  const refusalOf = (changed: object) => ask({ ...REQUEST, ...changed });
  const withStroke = (changed: object) => refusalOf({ stroke: { ...REQUEST.stroke, ...changed } });

  it('is told by the field at fault', () => {
    expect(refusalOf({ stroke: 1 }).field).toBe('stroke.headingDeg');
    expect(withStroke({ headingDeg: 'up' }).field).toBe('stroke.headingDeg');
    expect(withStroke({ elevationDeg: 90 }).field).toBe('stroke.elevationDeg');
    expect(withStroke({ speedMps: 40 }).field).toBe('stroke.speedMps');
    expect(withStroke({ side: null }).field).toBe('stroke.side');
    expect(refusalOf({ balls: [] }).field).toBe('balls');
  });

  it('is refused with a reason and what would help', () => {
    expect(withStroke({ side: 0.5, height: 0.4 })).toMatchObject({
      ok: false,
      reason: 'beyond-miscue-limit',
      remedy: expect.stringMatching(/\w/),
    });
    const inside = [...REQUEST.balls, { name: 4, xM: -0.09, yM: 0 }];
    expect(refusalOf({ balls: inside }).reason).toBe('overlap');
    const off = [...REQUEST.balls, { name: 4, xM: 2, yM: 0 }];
    expect(refusalOf({ balls: off }).reason).toBe('off-bed');
  });

  it('is told by its line where it is no object, and names slips of the pen', () => {
    expect(JSON.parse(answerPlay('nonsense', 3))).toMatchObject({ reason: 'malformed', line: 3 });
    expect(withStroke({ speed: 2 }).unknown).toEqual(['stroke.speed']);
  });
});
