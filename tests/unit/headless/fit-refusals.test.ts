import { describe, expect, it } from 'vitest';
import { answerFit } from '../../../src/headless/fit-answer';

const ask = (fields: object) => JSON.parse(answerFit(JSON.stringify(fields), 1));

const LINE = { trial: 'line', side: 0.45, distanceM: 1.9, read: { landingM: -0.05 } };
const STOP = { trial: 'stop', gapM: 0.3, speed: 'soft', read: { cueBallM: 0.02 } };
const THROW = { trial: 'throw', side: 0.3, cutDeg: 0, distanceM: 1, read: { objectLandingM: 0 } };
const RUN = { trial: 'speed', speed: 'firm', tableLengthM: 2.54, read: { runM: 6 } };
const CURVE = {
  trial: 'curve',
  side: 0.3,
  height: 0,
  elevationDeg: 10,
  speed: 'firm',
  distanceM: 1.9,
  read: { timeS: 1.2, landingM: 0 },
};

const askOf = (reading: object) => ask({ readings: [LINE, reading] });
const without = (reading: object, name: string) => ({ ...reading, [name]: undefined });

describe('a request to fit', () => {
  it.each([LINE, STOP, THROW, RUN, CURVE])('is answered as it should be: $trial', (reading) => {
    expect(askOf(reading).ok).toBe(true);
  });

  it.each([
    [{}, 'readings'],
    [{ readings: null }, 'readings'],
    [{ readings: LINE }, 'readings'],
    [{ readings: [LINE, 3] }, 'readings[1]'],
    [{ readings: [[]] }, 'readings[0]'],
    [{ readings: [], next: 'yes' }, 'next'],
    [{ readings: [], next: null }, 'next'],
    [{ readings: [], next: true }, 'tableLengthM'],
    [{ readings: [], next: true, tableLengthM: 0.5 }, 'tableLengthM'],
    [{ readings: [LINE], next: true }, 'tableLengthM'],
    [{ readings: [], for: 'me' }, 'for.cue'],
    [{ readings: [], for: { cloth: '' } }, 'for.cloth'],
    [{ readings: [], prior: 3 }, 'prior'],
    [{ readings: [], prior: { kit: { slideFriction: 2 } } }, 'prior.kit'],
    [{ readings: [], prior: { kit: null } }, 'prior.kit'],
    [{ readings: [], prior: { kit: { massRatio: 1e300 } } }, 'prior.kit'],
    [{ readings: [], prior: { kitSd: { massRatio: -1 } } }, 'prior.kitSd'],
    [{ readings: [], prior: { kitSd: [] } }, 'prior.kitSd'],
    [{ readings: [], stroke: 'steady' }, 'stroke'],
    [{ readings: [], stroke: { directionDeg: 11 } }, 'stroke'],
    [{ readings: [], stroke: { tipM: 0.02 } }, 'stroke'],
    [{ readings: [], stroke: { elevationDeg: 20 } }, 'stroke'],
    [{ readings: [], stroke: { speedShare: 0.6 } }, 'stroke'],
    [{ readings: [], aims: [] }, 'aims'],
    [{ readings: [], aims: {} }, 'aims'],
    [{ readings: [], aims: [1] }, 'aims[0]'],
    [{ readings: [], aims: [{ distanceM: 1 }] }, 'aims[0].cutDeg'],
  ])('is refused for %j, by the name of %s', (fields, field) => {
    const answer = ask(fields);
    expect(answer).toMatchObject({ ok: false, reason: 'out-of-range', field });
    expect(answer.message).toMatch(/^\S.*\.$/);
    expect(answer.remedy).toMatch(/^\S.*\.$/);
    expect(answer.message + answer.remedy).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('is refused for a bed on which nothing stops, and one to which it might come', () => {
    const kit = { rollFriction: 0.005, bedSlope: { alongM_per_M: 0.009 } };
    expect(ask({ readings: [], prior: { kit } })).toMatchObject({
      reason: 'never-stops',
      field: 'prior.kit',
    });
    const prior = { kit: { rollFriction: 0.005 }, kitSd: { bedSlope: { alongM_per_M: 1 } } };
    const strayed = ask({ readings: [LINE], prior });
    expect(['no-convergence', undefined]).toContain(strayed.reason);
  });

  it('is refused for an aim that cannot be, with the reason', () => {
    const aim = { distanceM: 1, cutDeg: 90, side: 0, height: 0, elevationDeg: 3, speedMps: 2 };
    const answer = ask({ readings: [], aims: [{ ...aim, cutDeg: 20 }, aim] });
    expect(answer).toMatchObject({ ok: false, reason: 'too-thin', field: 'aims[1]' });
  });

  it('takes four hundred readings, and no more', () => {
    const many = (count: number) => ({ readings: Array.from({ length: count }, () => 0) });
    expect(ask(many(401))).toMatchObject({ field: 'readings', ok: false });
    expect(ask(many(401)).message).toContain('400');
    expect(ask(many(400))).toMatchObject({ field: 'readings[0]' });
  });

  it('takes a dozen cues, and no more', () => {
    const many = (count: number) => ({
      readings: Array.from({ length: count }, (_, cue) => ({
        ...LINE,
        kit: { cue: `cue ${cue}` },
      })),
    });
    expect(ask(many(12)).ok).toBe(true);
    expect(ask(many(13))).toMatchObject({ ok: false, field: 'readings' });
    expect(ask(many(13)).message).toContain('cue');
  });
});

describe('a reading', () => {
  it.each([
    [{ ...LINE, trial: 'break' }, 'trial'],
    [without(LINE, 'trial'), 'trial'],
    [{ ...LINE, side: 0.6 }, 'side'],
    [{ ...LINE, side: null }, 'side'],
    [{ ...LINE, height: '0' }, 'height'],
    [{ ...LINE, elevationDeg: 46 }, 'elevationDeg'],
    [{ ...LINE, elevationDeg: -1 }, 'elevationDeg'],
    [{ ...LINE, headingDeg: 361 }, 'headingDeg'],
    [{ ...LINE, distanceM: 0 }, 'distanceM'],
    [{ ...LINE, distanceM: 5 }, 'distanceM'],
    [{ ...LINE, gapM: -1 }, 'gapM'],
    [{ ...LINE, speedMps: 0 }, 'speedMps'],
    [{ ...LINE, speed: 'hard' }, 'speed'],
    [{ ...LINE, speed: 2 }, 'speed'],
    [{ ...LINE, speed: 'firm', speedMps: 2 }, 'speed'],
    [{ ...STOP, gapM: 0 }, 'gapM'],
    [{ ...THROW, cutDeg: 61 }, 'cutDeg'],
    [{ ...RUN, tableLengthM: 0 }, 'tableLengthM'],
    [{ ...RUN, tableLengthM: null }, 'tableLengthM'],
    [{ ...LINE, kit: 'mine' }, 'kit.cue'],
    [{ ...LINE, kit: { balls: 7 } }, 'kit.balls'],
    [{ ...LINE, kit: { table: 'x'.repeat(81) } }, 'kit.table'],
    [{ ...LINE, read: {} }, 'read'],
    [{ ...LINE, read: -0.05 }, 'read'],
    [{ ...LINE, read: { timeS: 1 } }, 'read'],
    [{ ...LINE, read: { landingM: 2 } }, 'read.landingM'],
    [{ ...LINE, read: { landingM: null } }, 'read.landingM'],
    [{ ...CURVE, read: { landingM: 0, timeS: 0 } }, 'read.timeS'],
  ])('is refused for %j, by the name of %s', (reading, field) => {
    expect(askOf(reading)).toMatchObject({
      ok: false,
      reason: 'out-of-range',
      field: `readings[1].${field}`,
    });
  });

  it.each([
    [LINE, ['trial', 'side', 'distanceM', 'read']],
    [CURVE, ['side', 'height', 'elevationDeg', 'speed', 'distanceM']],
    [STOP, ['gapM', 'read']],
    [THROW, ['side', 'cutDeg', 'distanceM']],
    [RUN, ['speed', 'tableLengthM']],
    [{ trial: 'coast', headingDeg: 0, distanceM: 1.5, read: { timeS: 6 } }, ['headingDeg']],
    [{ trial: 'pivot', side: 0.4, distanceM: 1, read: { bridgeM: 0.3 } }, ['side']],
  ] as const)('$trial: misses what nobody can guess, by name', (reading, names) => {
    expect(askOf(reading).ok).toBe(true);
    for (const name of names) {
      const { field } = askOf(without(reading, name));
      const missed = name === 'tableLengthM' ? 'distanceM' : name;
      expect(field).toBe(`readings[1].${missed}`);
    }
  });

  it('tells the range that it might have been in', () => {
    expect(askOf({ ...LINE, elevationDeg: 50 }).message).toContain('from 0 to 45');
    expect(askOf({ ...THROW, cutDeg: 70 }).message).toContain('from -60 to 60');
    expect(askOf({ ...LINE, read: { landingM: 2 } }).message).toContain('from -1.5 to 1.5');
    expect(askOf({ ...LINE, distanceM: 0 }).remedy).toContain('tableLengthM');
  });

  it('is refused where the tip would slip', () => {
    expect(askOf({ ...LINE, side: 0.4, height: 0.4 })).toMatchObject({
      reason: 'beyond-miscue-limit',
      field: 'readings[1].side',
    });
  });

  it('needs not all of its trial’s readings, but one', () => {
    expect(askOf({ ...CURVE, read: { landingM: 0 } }).readings).toHaveLength(2);
    expect(askOf({ ...CURVE, read: { timeS: 1.2, landingM: 0 } }).readings).toHaveLength(3);
  });
});
