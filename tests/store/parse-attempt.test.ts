import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { READING_RANGES, TRIAL_RANGES } from '../../src/engine/fit/trials/trial';
import { TRIAL_NAMES } from '../../src/engine/fit/trials/trials';
import { isWithin, type Range } from '../../src/engine/numerics/range';
import type { Attempt } from '../../src/store/attempt';
import { parseAttempt } from '../../src/store/parse-attempt';
import { anything, damage } from './damaged-rows';
import { CURVE_ATTEMPT } from './invented-attempts';

const { shot } = CURVE_ATTEMPT;

/** An attempt with anything at all in some of its places, its id spared. */
const corrupted = fc
  .tuple(
    damage(CURVE_ATTEMPT),
    fc.option(damage(CURVE_ATTEMPT.readings), { nil: undefined }),
    fc.option(damage({ ...CURVE_ATTEMPT.butt }), { nil: undefined }),
    fc.option(damage(shot.stroke), { freq: 5, nil: undefined }),
  )
  .map(([attempt, readings, butt, stroke]): unknown => ({
    ...attempt,
    ...(readings ? { readings } : {}),
    ...(butt ? { butt } : {}),
    ...(stroke ? { shot: { ...shot, stroke } } : {}),
    id: CURVE_ATTEMPT.id,
  }));

/** The figures of an attempt that its own ranges do not allow. */
function wrongFigures({ shot, readings }: Attempt): string[] {
  const ranges: Readonly<Record<string, Range>> = { ...TRIAL_RANGES, ...READING_RANGES };
  const { speedWord: _, ...figures } = shot.stroke;
  const values = Object.entries({ ...figures, ...shot.setup, ...readings });
  return values
    .filter(
      ([name, value]) => Object.hasOwn(ranges, name) && !isWithin(ranges[name] ?? NOTHING, value),
    )
    .map(([name]) => name);
}
const NOTHING: Range = { min: 1, max: 0 };

const stroke = (field: string, value: unknown) => ({
  ...CURVE_ATTEMPT,
  shot: { ...shot, stroke: { ...shot.stroke, [field]: value } },
});
const setup = (field: string, value: unknown) => ({
  ...CURVE_ATTEMPT,
  shot: { ...shot, setup: { ...shot.setup, [field]: value } },
});

describe('parsing an attempt', () => {
  it('finds nothing to mend in a sound one', () => {
    expect(parseAttempt(CURVE_ATTEMPT)).toEqual({ ok: true, record: CURVE_ATTEMPT, repairs: [] });
  });

  it('gives one the engine takes, or says why not, for anything at all', () => {
    let kept = 0;
    fc.assert(
      fc.property(fc.oneof({ arbitrary: corrupted, weight: 5 }, anything), (raw) => {
        const parsed = parseAttempt(raw);
        if (!parsed.ok) {
          expect(['not-a-record', 'no-id', 'unreadable']).toContain(parsed.reason);
          return;
        }
        kept += 1;
        const { record } = parsed;
        expect(wrongFigures(record)).toEqual([]);
        expect(TRIAL_NAMES).toContain(record.shot.trial);
        expect(record.startedAtMs).toBeGreaterThanOrEqual(0);
        expect(Number.isSafeInteger(record.modelVersion)).toBe(true);
        expect(record.stepsDone.every((step) => typeof step === 'string')).toBe(true);
        expect(typeof record.isStruckOut).toBe('boolean');
      }),
      { numRuns: 1000 },
    );
    expect(kept).toBeGreaterThan(100);
  });

  it('finds nothing to mend in what it has mended', () => {
    fc.assert(
      fc.property(corrupted, (raw) => {
        const once = parseAttempt(raw);
        fc.pre(once.ok);
        expect(parseAttempt(once.record)).toEqual({
          ok: true,
          record: once.record,
          repairs: [],
        });
      }),
    );
  });

  it.each([
    ['far out of range', 7],
    ['a word', 'left'],
    ['no number', Number.NaN],
  ])('leaves out a reading that is %s, and never moves it into range', (_, was) => {
    const raw = { ...CURVE_ATTEMPT, readings: { timeS: 1.42, landingM: was } };
    const parsed = parseAttempt(raw);
    expect(parsed.ok && parsed.record.readings).toEqual({ timeS: 1.42 });
    expect(parsed.ok && 'landingM' in parsed.record.readings).toBe(false);
    expect(parsed.ok && parsed.repairs).toEqual([
      {
        store: 'attempts',
        id: CURVE_ATTEMPT.id,
        field: 'readings.landingM',
        was,
        now: undefined,
      },
    ]);
  });

  it.each([
    ['as high as the cue is long', { buttHeightM: 1, cueLengthM: 1 }],
    ['below the cloth', { buttHeightM: -0.01, cueLengthM: 1.47 }],
    ['of a cue as long as a table', { buttHeightM: 0.2, cueLengthM: 2.54 }],
    ['half read', { buttHeightM: 0.2 }],
    ['a word', 'raised'],
  ])('leaves out a butt %s', (_, was) => {
    const parsed = parseAttempt({ ...CURVE_ATTEMPT, butt: was });
    expect(parsed.ok && parsed.record).toEqual({ ...CURVE_ATTEMPT, butt: null });
    expect(parsed.ok && parsed.repairs.map(({ field }) => field)).toEqual(['butt']);
  });

  it.each([
    ['an unknown trial', { ...CURVE_ATTEMPT, shot: { ...shot, trial: 'jump' } }],
    ['a tip contact beyond the miscue limit', stroke('side', 0.51)],
    ['a cue raised too far', stroke('elevationRad', 1)],
    ['a speed of nothing', stroke('speedMps', 0)],
    ['a speed in words nobody uses', stroke('speedWord', 'brisk')],
    ['no speed', stroke('speedMps', undefined)],
    ['a cut beyond sixty degrees', setup('cutRad', 1.06)],
    ['a distance beyond the table', setup('distanceM', 4.01)],
    ['no set-up', { ...CURVE_ATTEMPT, shot: { ...shot, setup: null } }],
    ['no kit', { ...CURVE_ATTEMPT, choice: null }],
    ['half a kit', { ...CURVE_ATTEMPT, choice: { cues: 'demo-cue-house' } }],
    ['a kit of numbers', { ...CURVE_ATTEMPT, choice: { ...CURVE_ATTEMPT.choice, balls: 3 } }],
  ])('gives up on one with %s, since its readings then tell nothing', (_, raw) => {
    expect(parseAttempt(raw)).toEqual({ ok: false, reason: 'unreadable' });
  });

  it.each([
    [null, 'not-a-record'],
    [[CURVE_ATTEMPT], 'not-a-record'],
    [{ ...CURVE_ATTEMPT, id: 7 }, 'no-id'],
    [{ ...CURVE_ATTEMPT, id: '' }, 'no-id'],
  ])('gives up on what no attempt can be made of', (raw, reason) => {
    expect(parseAttempt(raw)).toEqual({ ok: false, reason });
  });

  it('takes one of unknown time for older than any change of the kit', () => {
    for (const was of [undefined, -1, 'yesterday', 9e15]) {
      const parsed = parseAttempt({ ...CURVE_ATTEMPT, startedAtMs: was });
      expect(parsed.ok && parsed.record.startedAtMs).toBe(0);
      expect(parsed.ok && parsed.repairs.map(({ field }) => field)).toEqual(['startedAtMs']);
    }
  });

  it('keeps one of an older or newer model as it is', () => {
    for (const modelVersion of [1, 2, 17]) {
      const raw = { ...CURVE_ATTEMPT, modelVersion };
      expect(parseAttempt(raw)).toEqual({ ok: true, record: raw, repairs: [] });
    }
  });

  it('drops steps that are no steps and digits that are none, and keeps the rest', () => {
    const raw = { ...CURVE_ATTEMPT, stepsDone: ['timeS', 4, null], typed: { step: 'landingM' } };
    const parsed = parseAttempt(raw);
    expect(parsed.ok && parsed.record).toEqual({
      ...CURVE_ATTEMPT,
      stepsDone: ['timeS'],
      typed: null,
    });
    expect(parsed.ok && parsed.repairs.map(({ field }) => field)).toEqual([
      'stepsDone.1',
      'stepsDone.2',
      'typed',
    ]);
  });

  it('keeps fields it does not know, at every depth', () => {
    const raw = {
      ...CURVE_ATTEMPT,
      weather: 'damp',
      readings: { ...CURVE_ATTEMPT.readings, bounceS: 0.3 },
      butt: { ...CURVE_ATTEMPT.butt, by: 'level' },
      shot: { ...shot, stroke: { ...shot.stroke, grip: 'light' } },
      choice: { ...CURVE_ATTEMPT.choice, chalk: 'blue' },
      isStruckOut: 'no',
    };
    const parsed = parseAttempt(raw);
    expect(parsed.ok && parsed.record).toEqual({ ...raw, isStruckOut: false });
  });
});
