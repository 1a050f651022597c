import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { kitFields } from '../../src/store/kit-fields';
import { numberAt, withNumberAt } from '../../src/store/number-at';
import { parseRecord } from '../../src/store/parse-record';
import { SHELF_NAMES } from '../../src/store/records';
import { kitProblemOf } from './engine-accepts';

/** Anything a database may hold: JSON, and what JSON cannot say. */
const anything = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom(undefined, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -0),
  fc.double(),
  fc.date(),
  fc.bigInt(),
  fc.uint8Array(),
);

const shelfName = fc.constantFrom(...SHELF_NAMES);

/** A record of our own with any of its fields, and fields it never had, gone to anything. */
const corrupted = shelfName.chain((shelf) => {
  const records = fc.constantFrom(...DEMO_CATALOGUE[shelf]);
  const names = Object.keys(DEMO_CATALOGUE[shelf][0] ?? {}).filter((name) => name !== 'id');
  const damage = fc.dictionary(fc.oneof(fc.constantFrom(...names), fc.string()), anything);
  return fc
    .tuple(records, damage)
    .map(([record, fields]) => [shelf, { ...record, ...fields, id: record.id }] as const);
});

describe('parsing a record', () => {
  it('gives one the engine takes, or says why not, for anything at all', () => {
    fc.assert(
      fc.property(shelfName, anything, (shelf, raw) => {
        const parsed = parseRecord(shelf, raw);
        const problem = parsed.ok ? kitProblemOf(shelf, parsed.record) : parsed.reason;
        expect([null, 'not-a-record', 'no-id', 'nothing-readable']).toContain(problem);
      }),
    );
  });

  it('mends a record with any of its fields gone to anything', () => {
    let mended = 0;
    fc.assert(
      fc.property(corrupted, ([shelf, raw]) => {
        const parsed = parseRecord(shelf, raw);
        if (!parsed.ok) {
          expect(parsed.reason).toBe('nothing-readable');
          return;
        }
        mended += 1;
        expect(kitProblemOf(shelf, parsed.record)).toBeNull();
        expect(parsed.record.id).toBe(raw.id);
        expect(parsed.record.name.trim()).not.toBe('');
        expect(parsed.record.name.length).toBeLessThanOrEqual(60);
        expect(['invented', 'by-hand']).toContain(parsed.record.origin);
      }),
      { numRuns: 1000 },
    );
    expect(mended).toBeGreaterThan(500);
  });

  it('finds nothing to mend in what it has mended', () => {
    fc.assert(
      fc.property(corrupted, ([shelf, raw]) => {
        const once = parseRecord(shelf, raw);
        fc.pre(once.ok);
        expect(parseRecord(shelf, once.record)).toEqual({
          ok: true,
          record: once.record,
          repairs: [],
        });
      }),
    );
  });

  const everyField = SHELF_NAMES.flatMap((shelf) =>
    kitFields(shelf).map((field) => [`${shelf} ${field.path}`, shelf, field] as const),
  );

  it.each(everyField)(
    'takes %s to the nearest bound when it is out of range',
    (_, shelf, field) => {
      const [record] = DEMO_CATALOGUE[shelf];
      if (!record) throw new Error(`no demo on ${shelf}`);
      const ends = [
        [field.range.min - 1, field.range.min],
        [field.range.max + 1, field.range.max],
      ] as const;
      for (const [was, now] of ends) {
        const parsed = parseRecord(shelf, withNumberAt(record, field.path, was));
        expect(parsed.ok && numberAt(parsed.record, field.path)).toBe(now);
        expect(parsed.ok && parsed.repairs).toEqual([
          { store: shelf, id: record.id, field: field.path, was, now },
        ]);
      }
    },
  );

  it.each(everyField)('gives %s a default when it is unreadable', (_, shelf, field) => {
    const [record] = DEMO_CATALOGUE[shelf];
    if (!record) throw new Error(`no demo on ${shelf}`);
    const parsed = parseRecord(shelf, withNumberAt(record, field.path, Number.NaN));
    const now = parsed.ok ? numberAt(parsed.record, field.path) : null;
    expect(now).not.toBeNull();
    expect(parsed.ok && parsed.repairs).toEqual([
      { store: shelf, id: record.id, field: field.path, was: Number.NaN, now },
    ]);
  });

  it('keeps fields it does not know, at every depth', () => {
    const [table] = DEMO_CATALOGUE.tables;
    if (!table) throw new Error('no demo table');
    const raw = { ...table, pockets: [1, 2], bedSlope: { ...table.bedSlope, twist: 3 }, widthM: 9 };
    const parsed = parseRecord('tables', raw);
    expect(parsed.ok && parsed.record).toEqual({ ...raw, widthM: 2 });
  });

  it('replaces a nested group that is no group, as one repair', () => {
    const [balls] = DEMO_CATALOGUE.balls;
    if (!balls) throw new Error('no demo balls');
    const parsed = parseRecord('balls', { ...balls, ballFriction: 'slippery' });
    expect(parsed.ok && parsed.repairs.map(({ field, was }) => [field, was])).toEqual([
      ['ballFriction', 'slippery'],
    ]);
  });

  it('takes a record from before changes were kept as one that never changed', () => {
    const [cue] = DEMO_CATALOGUE.cues;
    if (!cue) throw new Error('no demo cue');
    const { changes: _changes, like: _like, ...older } = cue;
    expect(parseRecord('cues', older)).toEqual({
      ok: true,
      record: { ...older, changes: [], like: null },
      repairs: [],
    });
  });

  it('keeps the changes it can date, and drops the others', () => {
    const [cue] = DEMO_CATALOGUE.cues;
    const tip = { atMs: 5, what: 'new tip', brand: 'none' };
    const changes = [tip, { what: 'undated' }, { atMs: -1, what: 'early' }, 'wet', { atMs: 7 }];
    const parsed = parseRecord('cues', { ...cue, changes });
    expect(parsed.ok && parsed.record.changes).toEqual([
      tip,
      { atMs: 7, what: 'Something changed' },
    ]);
    expect(parsed.ok && parsed.repairs.map(({ field }) => field)).toEqual([
      'changes.1',
      'changes.2',
      'changes.3',
      'changes.4.what',
    ]);
  });

  it.each([
    ['other', 'other', 0],
    [null, null, 0],
    [7, null, 1],
    ['', null, 1],
    ['x'.repeat(201), null, 1],
  ])('reads the record it starts from: %s', (like, now, repairs) => {
    const [cue] = DEMO_CATALOGUE.cues;
    const parsed = parseRecord('cues', { ...cue, like });
    expect(parsed.ok && parsed.record.like).toBe(now);
    expect(parsed.ok && parsed.repairs).toHaveLength(repairs);
  });

  it('shortens a long name and names the nameless', () => {
    const [cue] = DEMO_CATALOGUE.cues;
    const long = parseRecord('cues', { ...cue, name: `  ${'x'.repeat(90)}` });
    expect(long.ok && long.record.name).toBe('x'.repeat(60));
    const nameless = parseRecord('cues', { ...cue, name: ' ' });
    expect(nameless.ok && nameless.record.name).toBe('Cue without a name');
  });

  it('counts a record of unknown origin as the person’s own', () => {
    const [cue] = DEMO_CATALOGUE.cues;
    const parsed = parseRecord('cues', { ...cue, origin: 'guessed' });
    expect(parsed.ok && parsed.record.origin).toBe('by-hand');
  });

  it.each([
    ['a list', [1, 2], 'not-a-record'],
    ['nothing', null, 'not-a-record'],
    ['a word', 'cue', 'not-a-record'],
    ['a record without an id', { massRatio: 20 }, 'no-id'],
    ['a record with a number for an id', { id: 7, massRatio: 20 }, 'no-id'],
    ['a record with an endless id', { id: 'x'.repeat(201), massRatio: 20 }, 'no-id'],
    ['a record without a number of its own', { id: 'x', name: 'Mine' }, 'nothing-readable'],
    ['a record of another shelf', { id: 'x', slideFriction: 0.2 }, 'nothing-readable'],
  ])('gives up on %s', (_, raw, reason) => {
    expect(parseRecord('cues', raw)).toEqual({ ok: false, reason });
  });
});
