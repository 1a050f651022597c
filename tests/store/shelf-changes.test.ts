import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { freshId } from '../../src/store/fresh-id';
import { orderShelf } from '../../src/store/order-rows';
import type { Cue } from '../../src/store/records';
import { copyRecord, takeOffShelf } from '../../src/store/shelf-changes';

const cue = (id: string, name = id): Cue => ({
  id,
  name,
  origin: 'by-hand',
  changes: [],
  like: null,
  massRatio: 20,
  tipDiameterM: 0.013,
  tipRadiusM: 0.01,
});

describe('copying a record', () => {
  it('gives the same numbers from the same origin, under a new id and name', () => {
    const [stiff] = DEMO_CATALOGUE.cues;
    if (!stiff) throw new Error('no demo cue');
    expect(copyRecord<'cues'>(stiff, 'new', ['Stiff cue'])).toEqual({
      ...stiff,
      id: 'new',
      name: 'Stiff cue (copy)',
      like: stiff.id,
    });
  });

  it('starts from what was measured of the record, and not from what happened to it', () => {
    const changed = { ...cue('a'), changes: [{ atMs: 1, what: 'new tip' }], like: 'z' };
    expect(copyRecord<'cues'>(changed, 'new', [])).toMatchObject({ changes: [], like: 'a' });
  });

  it('counts on when the name is taken', () => {
    const names = ['A', 'A (copy)', 'A (copy 2)'];
    expect(copyRecord<'cues'>(cue('a', 'A'), 'new', names).name).toBe('A (copy 3)');
  });

  it('never gives a name that is taken or too long', () => {
    const name = fc.oneof(fc.constantFrom('A', 'x'.repeat(60)), fc.string({ maxLength: 60 }));
    fc.assert(
      fc.property(name, fc.integer({ min: 1, max: 12 }), (original, times) => {
        const names = [original];
        for (let count = 0; count < times; count += 1) {
          const copy = copyRecord<'cues'>(cue('a', original), `${count}`, names);
          expect(names).not.toContain(copy.name);
          expect(copy.name.length).toBeLessThanOrEqual(60);
          names.push(copy.name);
        }
      }),
    );
  });
});

describe('a fresh id', () => {
  it('is the browser’s own where it gives one', () => {
    expect(freshId({ randomUUID: () => 'given', getRandomValues: (array) => array })).toBe('given');
  });

  it('is made of random bytes where it does not', () => {
    const id = freshId({
      getRandomValues(array) {
        array.forEach((_, index) => {
          array[index] = index * 17;
        });
        return array;
      },
    });
    expect(id).toBe('00112233445566778899aabbccddeeff');
  });

  it('is another each time', () => {
    expect(new Set(Array.from({ length: 100 }, () => freshId())).size).toBe(100);
  });
});

describe('taking a record off a shelf', () => {
  const shelf = [cue('a'), cue('b'), cue('c')];

  it.each([
    ['a', 'b'],
    ['b', 'c'],
    ['c', 'b'],
  ])('names who follows %s: %s', (id, successorId) => {
    const takenOff = takeOffShelf<'cues'>(shelf, id);
    expect(takenOff?.successorId).toBe(successorId);
    expect(takenOff?.taken).toEqual(cue(id));
    expect(takenOff?.rest.map((record) => record.id)).not.toContain(id);
  });

  it('does not take the last, nor what is not there', () => {
    expect(takeOffShelf<'cues'>([cue('a')], 'a')).toBeNull();
    expect(takeOffShelf<'cues'>(shelf, 'z')).toBeNull();
  });
});

describe('the order of a shelf', () => {
  it('has our examples first, then names as people read numbers', () => {
    const own = [cue('1', 'Cue 10'), cue('2', 'cue 9'), cue('3', 'Ash')];
    const ordered = orderShelf('cues', [...own, ...[...DEMO_CATALOGUE.cues].reverse()]);
    expect(ordered.map(({ name }) => name)).toEqual([
      ...DEMO_CATALOGUE.cues.map(({ name }) => name),
      'Ash',
      'cue 9',
      'Cue 10',
    ]);
  });

  it('is the same whatever order the records come in', () => {
    const records = [...DEMO_CATALOGUE.cues, cue('1', 'Same'), cue('2', 'Same')];
    const shuffled = fc.shuffledSubarray(records, { minLength: records.length });
    fc.assert(
      fc.property(shuffled, (mixed) => {
        expect(orderShelf('cues', mixed)).toEqual(records);
      }),
    );
  });
});
