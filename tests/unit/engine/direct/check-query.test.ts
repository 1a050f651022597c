import { describe, expect, it } from 'vitest';
import { checkQuery } from '../../../../src/engine/direct/check-query';
import { INPUT_RANGES } from '../../../../src/engine/direct/input-ranges';
import { playAim } from '../../../../src/engine/direct/play-aim';
import type { Refusal, Shot } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT, type Kit } from '../../../../src/engine/kit/kit';
import { STROKE_RANGES } from '../../../../src/engine/stroke/stroke';
import { refusalWords } from '../../../../src/words/refusal-words';
import { nextUp } from '../../../harness/hostile-values';

const PLAIN: Shot = {
  distanceM: 1,
  cutRad: 0.3,
  side: 0,
  height: 0,
  elevationRad: 0.05,
  speedMps: 2,
};

const FIELDS = Object.keys(INPUT_RANGES) as (keyof Shot)[];

/** A shot with another value of a field, of any type at all. */
const withField = (field: keyof Shot, value: unknown) => ({ ...PLAIN, [field]: value }) as Shot;

describe('checkQuery', () => {
  it('takes a plain shot', () => {
    expect(checkQuery(PLAIN, DEFAULT_KIT)).toBeNull();
    expect(checkQuery(PLAIN, DEFAULT_KIT, 0.1)).toBeNull();
  });

  it.each(FIELDS)('%s: takes both ends of its range, and one double beyond is out', (field) => {
    const { min, max } = INPUT_RANGES[field];
    for (const value of [min, max]) {
      expect(checkQuery(withField(field, value), DEFAULT_KIT)?.reason).not.toBe('out-of-range');
    }
    for (const value of [-nextUp(-min), nextUp(max)]) {
      expect(checkQuery(withField(field, value), DEFAULT_KIT)).toMatchObject({
        reason: 'out-of-range',
        field,
      });
    }
  });

  it.each(FIELDS)('%s: is refused by name where it is no number', (field) => {
    for (const value of [Number.NaN, '1', null, [], {}, true, Number.POSITIVE_INFINITY]) {
      const refused = checkQuery(withField(field, value), DEFAULT_KIT);
      expect(refused).toMatchObject({ ok: false, reason: 'out-of-range', field });
    }
  });

  it('needs every field but the object ball’s distance', () => {
    for (const field of FIELDS) {
      const refused = checkQuery(withField(field, undefined), DEFAULT_KIT);
      if (field === 'objectDistanceM') expect(refused).toBeNull();
      else expect(refused).toMatchObject({ reason: 'out-of-range', field });
    }
  });

  it('takes aims up to a right angle either way', () => {
    for (const aim of [STROKE_RANGES.aimRad.min, STROKE_RANGES.aimRad.max]) {
      expect(checkQuery(PLAIN, DEFAULT_KIT, aim)).toBeNull();
    }
    for (const aim of [nextUp(STROKE_RANGES.aimRad.max), -4, Number.NaN]) {
      expect(checkQuery(PLAIN, DEFAULT_KIT, aim)).toMatchObject({ field: 'aimRad' });
    }
  });

  it('tells a tip that slips off from a side out of range', () => {
    expect(checkQuery({ ...PLAIN, side: 0.4, height: 0.31 }, DEFAULT_KIT)).toMatchObject({
      reason: 'beyond-miscue-limit',
      field: 'side',
    });
    expect(checkQuery({ ...PLAIN, side: 0.4, height: 0.3 }, DEFAULT_KIT)).toBeNull();
  });

  it('tells a bed on which nothing stops, and which input that is', () => {
    const kit: Kit = {
      ...DEFAULT_KIT,
      rollFriction: 0.005,
      bedSlope: { alongM_per_M: 0.008, rightM_per_M: 0 },
    };
    expect(checkQuery(PLAIN, kit)).toMatchObject({ reason: 'never-stops', field: 'kit' });
    expect(checkQuery(PLAIN, { ...kit, rollFriction: 0.006 })).toBeNull();
  });
});

const messageOf = (refusal: Refusal | null) => refusal && refusalWords(refusal).message;

describe('the words of a refusal', () => {
  it.each<[Partial<Record<keyof Shot, number>>, string]>([
    [{ distanceM: 9 }, 'Distance must be a number from 0.005 to 4.1 m.'],
    [{ cutRad: 2 }, 'Cut must be a number from -90 to 90°.'],
    [{ side: 1.5 }, 'Side must be a number from -1 to 1 of the radius.'],
    [{ height: -2 }, 'Height must be a number from -1 to 1 of the radius.'],
    [{ elevationRad: -0.1 }, 'Cue elevation must be a number from 0 to 75°.'],
    [{ speedMps: 0 }, 'Speed must be a number from 0.02 to 13 m/s.'],
    [{ objectDistanceM: 6 }, 'The object ball’s distance must be a number from 0.001 to 5 m.'],
  ])('%o: what it must be, in the units of the table', (field, message) => {
    expect(messageOf(checkQuery({ ...PLAIN, ...field }, DEFAULT_KIT))).toBe(message);
  });

  it('names the quantity of the kit and its span', () => {
    const slippery = checkQuery(PLAIN, { ...DEFAULT_KIT, slideFriction: 2 });
    expect(slippery?.field).toBe('kit');
    expect(messageOf(slippery)).toBe('slideFriction of the kit must be a number from 0.02 to 1.');
    expect(messageOf(checkQuery(PLAIN, { ...DEFAULT_KIT, massRatio: 1 }))).toBe(
      'massRatio of the kit must be a number at least 2.',
    );
    const ballFriction = { ...DEFAULT_KIT.ballFriction, c: -1 };
    expect(messageOf(checkQuery(PLAIN, { ...DEFAULT_KIT, ballFriction }))).toBe(
      'ballFriction.c of the kit must be a number from 0 to 20.',
    );
  });

  it('is the same from both doors', () => {
    const shot = { ...PLAIN, speedMps: 50 };
    expect(solveAim(shot, DEFAULT_KIT)).toEqual(checkQuery(shot, DEFAULT_KIT));
    expect(playAim(shot, DEFAULT_KIT, 0)).toEqual(checkQuery(shot, DEFAULT_KIT));
  });
});
