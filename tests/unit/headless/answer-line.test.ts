import { describe, expect, it } from 'vitest';
import { playAim } from '../../../src/engine/direct/play-aim';
import type { AimAnswer, AimResult, Shot } from '../../../src/engine/direct/shot';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { answerLine } from '../../../src/headless/answer-line';
import { between, seededRandom } from '../../harness/seeded-random';

const DEG = 180 / Math.PI;

const SHOT = {
  distanceM: 1.15,
  cutDeg: 24,
  side: -0.4,
  height: 0,
  elevationDeg: 3,
  speedMps: 1.8,
};

const ask = (fields: object, line = 1) => JSON.parse(answerLine(JSON.stringify(fields), line));
const askText = (text: string, line = 1) => JSON.parse(answerLine(text, line));

/** Every value of JSON that is no number. */
const JUNK = [null, '1', '', true, false, [], [1], {}, { value: 1 }];

function answered(result: AimResult): AimAnswer {
  if (!result.ok) throw new Error(result.reason);
  return result;
}

describe('the answer to a line', () => {
  it('is the engine’s, angles in degrees', () => {
    const random = seededRandom(40);
    for (let count = 0; count < 100; count++) {
      const request = {
        distanceM: between(random, 0.2, 2),
        cutDeg: between(random, -60, 60),
        side: between(random, -0.3, 0.3),
        height: between(random, -0.3, 0.3),
        elevationDeg: between(random, 0, 20),
        speedMps: between(random, 1.5, 4),
      };
      const { cutDeg, elevationDeg, ...plain } = request;
      const shot: Shot = {
        ...plain,
        cutRad: (cutDeg * Math.PI) / 180,
        elevationRad: (elevationDeg * Math.PI) / 180,
      };
      const result = solveAim(shot, DEFAULT_KIT);
      if (!result.ok) continue;
      const told = ask(request);
      expect(told.ok).toBe(true);
      const pairs: [number, number | null][] = [
        [told.aimAngleDeg, result.aimRad],
        [told.parts.squirtDeg, result.parts.squirtRad],
        [told.parts.swerveDeg, result.parts.swerveRad],
        [told.parts.throwDeg, result.parts.throwRad],
        [told.arrival.directionDeg, result.arrival.directionRad],
        [told.arrival.cutDeg, result.arrival.cutRad],
        [told.objectBall.directionDeg, result.objectBall.directionRad],
        [told.cueBall.directionDeg, result.cueBall.directionRad],
        [told.cueBall.rollingDirectionDeg, result.cueBall.rollingDirectionRad],
      ];
      for (const [deg, rad] of pairs) expect(deg).toBeCloseTo((rad ?? 9) * DEG, 9);
      for (const name of ['aimOffsetM', 'stickOffsetM', 'aimOnObjectBallM'] as const) {
        expect(told[name]).toBeCloseTo(result[name], 12);
      }
      expect(told.arrival).toMatchObject({
        speedMps: expect.closeTo(result.arrival.speedMps, 12),
        sideSpinRadS: expect.closeTo(result.arrival.sideSpinRadS, 9),
        phase: result.arrival.motion,
        heightM: expect.closeTo(result.arrival.heightM, 12),
        timeS: expect.closeTo(result.arrival.timeS, 12),
      });
      expect(told.otherAimsDeg).toHaveLength(result.otherAimsRad.length);
    }
  });

  it('is what happens at an aim where the line names one', () => {
    const aimRad = 0.01;
    const { cutDeg, elevationDeg, ...plain } = SHOT;
    const shot = { ...plain, cutRad: cutDeg / DEG, elevationRad: elevationDeg / DEG };
    const result = answered(playAim(shot, DEFAULT_KIT, aimRad));
    const told = ask({ ...SHOT, aimAngleDeg: aimRad * DEG });
    expect(told.objectBall.directionDeg).toBeCloseTo(
      (result.objectBall.directionRad ?? 9) * DEG,
      9,
    );
    expect(ask({ ...SHOT, aimAngleDeg: 50 })).toMatchObject({
      ok: false,
      reason: 'misses',
      field: 'aimAngleDeg',
    });
  });

  it('takes a kit in part, and ends of ranges as they are written', () => {
    const stiff = ask({ ...SHOT, kit: { massRatio: 12 } });
    expect(stiff.parts.squirtDeg).toBeLessThan(ask(SHOT).parts.squirtDeg);
    expect(ask({ ...SHOT, kit: { ballFriction: { a: 0, b: 0 } } }).ok).toBe(true);
    expect(
      askText(JSON.stringify({ ...SHOT, kit: {} }).replace('{}', '{"massRatio":1e999}')).ok,
    ).toBe(true);
    expect(ask({ ...SHOT, cutDeg: 90, side: 0 }).reason).toBe('too-thin');
    expect(ask({ ...SHOT, elevationDeg: 75, side: 0 }).field).toBeUndefined();
  });
});

describe('a field that is no number', () => {
  const FIELDS = [...Object.keys(SHOT), 'aimAngleDeg'];

  it.each(FIELDS)('%s: is refused by the name the line gave it', (field) => {
    for (const value of JUNK) {
      const told = ask({ ...SHOT, [field]: value });
      expect(told).toMatchObject({ ok: false, reason: 'out-of-range', field });
      expect(told.message).not.toMatch(/NaN|undefined|null/);
    }
    const huge = JSON.stringify({ ...SHOT, [field]: 0 }).replace(
      `"${field}":0`,
      `"${field}":1e999`,
    );
    expect(askText(huge)).toMatchObject({ ok: false, field });
  });

  it.each(Object.keys(SHOT))('%s: is missed by name where it is left out', (field) => {
    const line = { ...SHOT, [field]: undefined };
    expect(ask(line)).toMatchObject({ ok: false, reason: 'out-of-range', field });
  });

  it('is refused in a target, and a target that is no object', () => {
    for (const value of JUNK) {
      const told = ask({ ...SHOT, target: { distanceM: value } });
      expect(told).toMatchObject({ ok: false, field: 'target.distanceM' });
    }
    for (const target of [null, 3, 'pocket', [], true]) {
      expect(ask({ ...SHOT, target })).toMatchObject({ ok: false, field: 'target.distanceM' });
    }
    expect(ask({ ...SHOT, target: {} }).ok).toBe(true);
    expect(ask({ ...SHOT, target: { distanceM: 0.5 } }).ok).toBe(true);
  });

  it.each(Object.keys(DEFAULT_KIT))('kit.%s: is refused as the kit’s', (quantity) => {
    for (const value of [null, '1', true, [], [1]]) {
      const told = ask({ ...SHOT, kit: { [quantity]: value } });
      expect(told).toMatchObject({ ok: false, reason: 'out-of-range', field: 'kit' });
      expect(told.message).toContain(quantity);
    }
  });

  it('is refused deep in the kit, by its dotted name', () => {
    for (const [outer, inner] of [
      ['ballFriction', 'a'],
      ['ballFriction', 'c'],
      ['bedSlope', 'rightM_per_M'],
    ] as const) {
      const told = ask({ ...SHOT, kit: { [outer]: { [inner]: 'x' } } });
      expect(told).toMatchObject({ ok: false, field: 'kit' });
      expect(told.message).toContain(`${outer}.${inner}`);
    }
  });

  it('is refused for a whole kit that is no object', () => {
    for (const kit of [null, 5, 'maple', [], false]) {
      expect(ask({ ...SHOT, kit })).toMatchObject({ ok: false, field: 'kit' });
    }
  });

  it.each(['stroke', 'kitSd'])('%s: is refused where it should be an object', (field) => {
    const want = field === 'stroke' ? ['chance'] : ['certainty'];
    const target = { distanceM: 0.8, mouthM: 0.116 };
    for (const value of [null, 5, 'steady', [], true]) {
      const told = ask({ ...SHOT, want, target, [field]: value });
      expect(told).toMatchObject({ ok: false, reason: 'out-of-range', field });
    }
  });
});

describe('the id', () => {
  it.each([0, -1.5, '', 'a', false, true, null, [], [1, [2]], {}, { a: { b: 'c' } }])(
    '%j comes back as it went',
    (id) => {
      expect(ask({ ...SHOT, id }).id).toEqual(id);
      expect(ask({ id }).id).toEqual(id);
    },
  );

  it('is null where none was given', () => {
    expect(ask(SHOT)).toHaveProperty('id', null);
  });
});

describe('a line that is no JSON object', () => {
  it.each([
    '',
    '{',
    'nonsense',
    '[]',
    '[{}]',
    '1',
    '"text"',
    'null',
    'true',
    '{"a":1}}',
    '{a:1}',
    'NaN',
  ])('%s is told by its number', (text) => {
    expect(askText(text, 17)).toEqual({
      id: null,
      ok: false,
      reason: 'malformed',
      line: 17,
      message: 'Line 17 is not a JSON object.',
      remedy: expect.stringMatching(/\.$/),
    });
  });

  it('is the only thing told by number: an object in any order of keys is an object', () => {
    const { line, ...rest } = ask(SHOT, 17);
    expect(line).toBeUndefined();
    const backwards = Object.fromEntries(Object.entries(SHOT).reverse());
    expect(ask(backwards)).toEqual(rest);
  });

  it('does not trip over names that objects have by birth', () => {
    const told = askText(
      `{"__proto__":{"side":9},"constructor":1,${JSON.stringify(SHOT).slice(1)}`,
    );
    expect(told.ok).toBe(true);
    expect(told.aimAngleDeg).toBe(ask(SHOT).aimAngleDeg);
  });
});

describe('names that mean nothing', () => {
  it('change no answer', () => {
    const { unknown, ...told } = ask({ ...SHOT, note: 'hi', kit: { colour: 'red' }, speed: 3 });
    expect(told).toEqual(ask(SHOT));
    expect(unknown).toEqual(['note', 'kit.colour', 'speed']);
  });
});
