import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeValue } from '../../src/store/backup/value-text';
import { isSame } from '../../src/store/same-value';

/** Few leaves and few names, so that two of them are often the same, or nearly. */
const value = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    fc.constantFrom<unknown>(0, -0, 1, '1', '', Number.NaN, undefined, null, true),
    fc.array(tie('value'), { maxLength: 2 }),
    fc.dictionary(fc.constantFrom('a', 'b', '~'), tie('value'), { maxKeys: 2 }),
  ),
})).value;

describe('two values', () => {
  it('are the same where they are written as the same text', () => {
    let same = 0;
    fc.assert(
      fc.property(value, value, (one, other) => {
        const isOneText = writeValue(one) === writeValue(other);
        if (isOneText) same += 1;
        expect(isSame(one, other)).toBe(isOneText);
        expect(isSame(one, structuredClone(one))).toBe(true);
      }),
      { numRuns: 2000 },
    );
    expect(same).toBeGreaterThan(20);
  });

  it('that go round in a ring are compared as deep as a row is written', () => {
    const ring = () => {
      const made: { next?: unknown } = {};
      made.next = made;
      return made;
    };
    expect(isSame(ring(), ring())).toBe(true);
    expect(isSame(ring(), { next: { next: 1 } })).toBe(false);
  });

  it('are not looked into where both have the very same part', () => {
    let reads = 0;
    const part = new Proxy(
      { deep: 1 },
      {
        ownKeys() {
          reads += 1;
          return [];
        },
      },
    );
    expect(isSame({ part, at: 1 }, { part, at: 1 })).toBe(true);
    expect(reads).toBe(0);
  });
});
