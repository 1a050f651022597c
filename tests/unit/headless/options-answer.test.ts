import { describe, expect, it } from 'vitest';
import { answerOptions } from '../../../src/headless/options-answer';

const ask = (fields: object, line = 1) => JSON.parse(answerOptions(JSON.stringify(fields), line));

/** A whole sweep takes a few seconds on a busy machine. */
const SWEEP_TIMEOUT_MS = 300_000;

const KINDS = ['bank', 'carom', 'combination', 'direct', 'kick'];

/** Invented: a short cut of about 23° into the middle pocket. */
const REQUEST = {
  id: 4,
  table: { lengthM: 2.54, widthM: 1.27 },
  balls: [
    { name: 2, xM: 0.3, yM: 0.8 },
    { name: 'cue', xM: -0.25, yM: -0.45 },
    { name: 1, xM: 0.2, yM: -0.12 },
  ],
  play: { ball: 1, pocket: 'middle-right' },
};

describe('the ways that a position can be played', { timeout: SWEEP_TIMEOUT_MS }, () => {
  const answer = ask({ ...REQUEST, most: 4 });
  const kindsOf = ({ ways }: { ways: readonly { kind: string }[] }) => ways.map(({ kind }) => kind);
  const cuts = answer.ways.filter(({ kind }: { kind: string }) => kind === 'direct');

  it('come the easiest first, in door units', () => {
    expect(answer).toMatchObject({ id: 4, ok: true });
    expect(answer.unknown).toBeUndefined();
    expect(answer.compared).toBeGreaterThan(5000);
    expect(answer.ways).toHaveLength(4);
    const percents = answer.ways.map((way: { chance: { share: number }; clean: number }) =>
      Math.round(100 * way.chance.share * way.clean),
    );
    expect([...percents].sort((a, b) => b - a)).toEqual(percents);
    for (const way of cuts) {
      // As level as a cue goes is 3° (common practice, no source), and the grid raises it by 16° more.
      expect(way.elevationDeg).toBeGreaterThanOrEqual(3 - 1e-9);
      expect(way.elevationDeg).toBeLessThanOrEqual(19 + 1e-9);
      expect(way.forgives.aimAngleDeg.low.value).toBeLessThan(way.aimAngleDeg);
      expect(way.goodPosition).toBeNull();
    }
  });

  it('say what they do, and where the cue points over the table', () => {
    const does = { kind: 'direct', ball: 1, pocket: 'middle-right', via: [{ ball: 1, by: 'cue' }] };
    expect(cuts.length).toBeGreaterThan(0);
    for (const way of cuts) {
      expect(way).toMatchObject({ ...does, doubleKiss: false, shot: answer.shot });
      expect(way.headingDeg).toBeCloseTo(answer.shot.headingDeg + way.aimAngleDeg, 9);
    }
  });

  it('tell the shot that the position makes', () => {
    const { shot } = answer;
    // From the cue ball to the ghost ball, drawn by hand: the ball's mouth lies square to the right
    // of it and a little up, so the ghost ball is a ball's width left of it and a little down.
    expect(shot.ghost.xM).toBeCloseTo(0.2 - 0.057 * Math.cos(0.27), 1);
    expect(shot.distanceM).toBeCloseTo(Math.hypot(shot.ghost.xM + 0.25, shot.ghost.yM + 0.45), 9);
    expect(shot.cutDeg).toBeGreaterThan(20);
    expect(shot.cutDeg).toBeLessThan(26);
    expect(shot).toMatchObject({ inTheWay: [], bridge: 'on-the-bed', least: { over: 'nothing' } });
  });

  it('count the zone where one is given', () => {
    const zoned = ask({ ...REQUEST, most: 2, zone: { xM: 0.1, yM: 0.35, radiusM: 0.3 } });
    expect(zoned.ways[0].kind).toBe('direct');
    for (const way of zoned.ways.slice(0, 1)) {
      expect(way.goodPosition).toBeGreaterThan(0.3);
      expect(way.goodPosition).toBeLessThanOrEqual(1);
    }
  });

  it('have the best of each other kind among them, and say why there is none of some', () => {
    const others = kindsOf(answer).filter((kind) => kind !== 'direct');
    expect(others.length).toBeGreaterThan(0);
    expect(new Set(others).size).toBe(others.length);
    const without = kindsOf({ ways: answer.none });
    expect([...others, 'direct', ...without].sort()).toEqual(KINDS);
    for (const way of answer.ways) {
      expect(way).toMatchObject({ ball: 1, pocket: 'middle-right' });
      if (way.kind !== 'direct') expect(way).toMatchObject({ shot: null, aimAngleDeg: null });
    }
    expect(answer.message).toBeUndefined();
  });

  it('are those of other kinds where the direct one is closed, which says why', () => {
    const thin = ask({ ...REQUEST, play: { ball: 1, pocket: 'near-left' } });
    expect(thin).toMatchObject({ ok: true, shot: null });
    expect(kindsOf(thin)).not.toContain('direct');
    expect(thin.ways.length).toBeGreaterThan(0);
    expect(thin.none[0]).toEqual({
      kind: 'direct',
      why: 'too-thin',
      message: 'No direct cut goes: mostly, the cut would be over 87°.',
    });
  });

  it('are none where none of any kind goes, which says why kind by kind', () => {
    const shut = ask({ ...REQUEST, balls: [...REQUEST.balls, { name: 3, xM: 0.4, yM: -0.065 }] });
    expect(shut).toMatchObject({ ok: true, compared: 0, ways: [] });
    expect(kindsOf({ ways: shut.none }).sort()).toEqual(KINDS);
    expect(shut.none[0]).toMatchObject({ kind: 'direct', why: 'in-the-way' });
    expect(shut.message).toMatch(/^No direct cut goes: .* No kick goes: /);
  });

  it('see the table’s slope from the break end, whichever way the shot runs', () => {
    const kit = { bedSlope: { alongM_per_M: 0.003, rightM_per_M: 0 } };
    const straight = {
      ...REQUEST,
      balls: [
        { name: 'cue', xM: -0.5, yM: 0 },
        { name: 1, xM: 0, yM: 0 },
      ],
      most: 1,
    };
    // The bed falls away from the break end; a shot to the right sees it fall to its left, so the
    // aim of a straight one lies to the right.
    const [way] = ask({ ...straight, kit }).ways;
    expect(way.way.side).toBe('none');
    expect(way.aimAngleDeg).toBeGreaterThan(0.03);
  });
});

describe('a request that cannot be taken', () => {
  const refusalOf = (changed: object) => ask({ ...REQUEST, ...changed });

  it('is told by the field at fault', () => {
    const field = (changed: object) => refusalOf(changed).field;
    expect(field({ table: undefined })).toBe('table');
    expect(field({ table: { lengthM: 9, widthM: 1.27 } })).toBe('table.lengthM');
    expect(field({ balls: 3 })).toBe('balls');
    expect(field({ balls: [{ name: 'cue', xM: 0 }] })).toBe('balls[0].yM');
    expect(field({ balls: [{ name: 16, xM: 0, yM: 0 }] })).toBe('balls[0].name');
    expect(field({ balls: [{ name: 1, xM: 0, yM: 0 }] })).toBe('balls');
    expect(field({ play: { ball: 1, pocket: 'top' } })).toBe('play.pocket');
    expect(field({ play: null })).toBe('play');
    expect(field({ zone: { xM: 0, yM: 0, radiusM: 0 } })).toBe('zone');
    expect(field({ most: 0 })).toBe('most');
    expect(field({ kit: { massRatio: 1 } })).toBe('kit');
    expect(field({ kitSd: { massRatio: -1 } })).toBe('kitSd');
    expect(field({ stroke: { directionDeg: 0 } })).toBe('stroke');
  });

  it('says why there is no shot, and what would help', () => {
    expect(refusalOf({ play: { ball: 9, pocket: 'far-left' } })).toMatchObject({
      ok: false,
      reason: 'no-such-ball',
      remedy: expect.stringMatching(/\w/),
    });
    const twice = [...REQUEST.balls, { name: 1, xM: 0, yM: 0 }];
    expect(refusalOf({ balls: twice }).field).toBe('balls');
  });

  it('is told by its line where it is no object, and names slips of the pen', () => {
    expect(JSON.parse(answerOptions('[]', 7))).toMatchObject({ reason: 'malformed', line: 7 });
    const odd = refusalOf({ play: { ball: 1, pocket: 'top', spin: 1 }, colour: 'red' });
    expect(odd.unknown).toEqual(['play.spin', 'colour']);
  });
});
