import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FigureField } from '../../../src/state/figure-field';
import { figureFields } from '../../../src/state/kit-figure';
import { DEFAULT_PREFERENCES } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { kitFields } from '../../../src/store/kit-fields';
import { numberAt } from '../../../src/store/number-at';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../../../src/store/records';
import { openKit } from './open-kit';

const first = <T>([one]: readonly T[]): T => {
  if (one === undefined) throw new Error('an empty shelf');
  return one;
};
const IN_PLAY = {
  cues: first(DEMO_CATALOGUE.cues),
  cloths: first(DEMO_CATALOGUE.cloths),
  balls: first(DEMO_CATALOGUE.balls),
  tables: first(DEMO_CATALOGUE.tables),
};
const UNITS = [
  DEFAULT_PREFERENCES,
  { ...DEFAULT_PREFERENCES, lengthUnit: 'in', distanceUnit: 'in', speedUnit: 'mph' },
  { ...DEFAULT_PREFERENCES, lengthUnit: 'cm', distanceUnit: 'diamonds', speedUnit: 'lengths' },
] as const;

/** Every figure that a player can see, with each record it may be of. */
const CASES = UNITS.flatMap((units) =>
  SHELF_NAMES.flatMap((shelf) =>
    figureFields(shelf, { inPlay: IN_PLAY, units })
      .filter(({ kind }) => kind === 'felt')
      .flatMap((field) =>
        DEMO_CATALOGUE[shelf].map((record) => ({
          shelf,
          field: field as FigureField<ShelfName>,
          record: record as Shelves[ShelfName],
        })),
      ),
  ),
);
const aCase = fc.constantFrom(...CASES);
const aShare = fc.double({ min: 0, max: 1, noNaN: true });

describe('a figure that a player can see', () => {
  it('is read back as it was written, far within what is shown of it', () => {
    fc.assert(
      fc.property(aCase, aShare, ({ field, record }, share) => {
        const { min, max } = field.rangeOf(record);
        const figure = min + share * (max - min);
        const read = field.read(field.write(record, figure));
        expect(Math.abs(read - figure)).toBeLessThan(0.5 * 10 ** -(field.facts.decimals + 3));
      }),
      { numRuns: 300 },
    );
  });

  it('writes numbers that the record may hold, and no others', () => {
    fc.assert(
      fc.property(aCase, aShare, ({ shelf, field, record }, share) => {
        const { min, max } = field.rangeOf(record);
        const written = field.write(record, min + share * (max - min));
        for (const { path, range } of kitFields(shelf)) {
          const value = numberAt(written, path) ?? Number.NaN;
          expect(value).toBeGreaterThanOrEqual(range.min);
          expect(value).toBeLessThanOrEqual(range.max);
          if (!field.writes.includes(path)) expect(value).toBe(numberAt(record, path));
        }
      }),
      { numRuns: 300 },
    );
  });

  it('throws as asked even where the balls were said not to rub at all', () => {
    const smooth = { ...IN_PLAY.balls, ballFriction: { a: 0, b: 0, c: 1 } };
    const [field] = figureFields('balls', { inPlay: IN_PLAY, units: DEFAULT_PREFERENCES });
    expect(field?.read(smooth)).toBe(0);
    expect(field?.read(field.write(smooth, 3))).toBeCloseTo(3, 9);
  });
});

describe('the kit by what a player can see', () => {
  const CUE = 'demo-cue-house';

  it('takes squirt or pivot as typed, and moves the other with it', async () => {
    const { kit } = await openKit();
    const figure = (path: string) =>
      kit.figures('cues', CUE).find((one) => one.path === path)?.figure ?? Number.NaN;
    const pivotBefore = figure('felt.pivot');
    expect(kit.enter('cues', CUE, 'felt.squirt', '30')).toEqual({ ok: true });
    expect(figure('felt.squirt')).toBeCloseTo(30, 9);
    expect(figure('felt.pivot')).toBeGreaterThan(pivotBefore);
    expect(kit.find('cues', CUE)?.origin).toBe('by-hand');
    expect(kit.nudge('cues', CUE, 'felt.squirt', 1)).toEqual({ ok: true });
    expect(figure('felt.squirt')).toBeCloseTo(31, 9);
  });

  it('keeps a number as it is where a figure is left as it is shown', async () => {
    const { kit } = await openKit();
    const shown = kit.figures('cues', CUE)[0]?.figure.toFixed(0) ?? '';
    expect(kit.enter('cues', CUE, 'felt.squirt', shown)).toEqual({ ok: true });
    expect(kit.find('cues', CUE)?.massRatio).toBe(22);
  });

  it('refuses a figure that no such thing has, with a line that names the bound', async () => {
    const { kit } = await openKit();
    expect(kit.enter('cues', CUE, 'felt.squirt', '900')).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/^Squirt over a table length: The most is \d+ mm\.$/),
    });
    expect(kit.enter('balls', 'demo-balls-clean', 'felt.throw', '45')).toMatchObject({
      ok: false,
      problem: expect.stringMatching(/^Throw: The most is 9\.\d°\.$/),
    });
    expect(kit.find('cues', CUE)?.massRatio).toBe(22);
  });

  it('puts a number back that a press taken away has moved', async () => {
    const { kit } = await openKit();
    const putBack = kit.remember('cues', CUE, 'felt.squirt');
    kit.nudge('cues', CUE, 'felt.squirt', 1, true);
    putBack();
    expect(kit.find('cues', CUE)?.massRatio).toBe(22);
  });
});
