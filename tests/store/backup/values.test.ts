import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readValue, writeValue } from '../../../src/store/backup/value-text';

/** Whatever the app may keep: JSON, what JSON has no word for, and keys that mean something. */
const anyValue = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.oneof(
      fc.double(),
      fc.string({ unit: 'binary' }),
      fc.constantFrom<unknown>(undefined, Number.NaN, Number.NEGATIVE_INFINITY, -0, null, true),
    ),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(
      fc.oneof(fc.constantFrom('~', 'of', '__proto__', 'constructor', '1'), fc.string()),
      tie('value'),
      { maxKeys: 4, noNullPrototype: true },
    ),
  ),
})).value;

const nested = (depth: number): unknown => (depth === 0 ? 1 : [nested(depth - 1)]);

describe('values in a backup', () => {
  it('come back as they were, whatever they are', () => {
    fc.assert(
      fc.property(anyValue, (value) => {
        // Vitest takes a field called `constructor` for the object's own; Node does not.
        expect(isDeepStrictEqual(readValue(writeValue(value)), { ok: true, value })).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('are JSON that any program can read', () => {
    const value = { name: 'cue', parts: [1.5, null, true, 'x\n'] };
    expect(JSON.parse(writeValue(value))).toEqual(value);
  });

  it('are the same text whatever the order of their fields', () => {
    expect(writeValue({ b: 1, a: { d: 2, c: 3 } })).toBe(writeValue({ a: { c: 3, d: 2 }, b: 1 }));
  });

  it('never touch a prototype', () => {
    const read = readValue('{"__proto__":{"isAdmin":true},"a":{"constructor":{"b":1}}}');
    if (!read.ok) throw new Error('not read');
    const value = read.value as Record<string, unknown>;
    expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
    expect(Object.hasOwn(value, '__proto__')).toBe(true);
    expect(Reflect.get({}, 'isAdmin')).toBeUndefined();
    expect(value.isAdmin).toBeUndefined();
  });

  it('become a text where no version of the app would store them', () => {
    const ring: Record<string, unknown> = {};
    ring.self = ring;
    const odd = { at: new Map(), when: new Date(0), big: 12n, ring };
    const read = readValue(writeValue(odd));
    expect(read.ok && read.value).toMatchObject({
      at: '[object Map]',
      when: '[object Date]',
      big: '12',
    });
    expect(writeValue(ring)).toContain('[object Object]');
  });

  it('are refused where they go deeper than any row does', () => {
    expect(readValue(JSON.stringify(nested(40))).ok).toBe(true);
    expect(readValue(JSON.stringify(nested(60))).ok).toBe(false);
    expect(readValue(`${'['.repeat(1e6)}${']'.repeat(1e6)}`).ok).toBe(false);
  });

  it.each(['', '{', '{"a":}', '[1,]', 'NaN', '{"a":1}}', '\u0000'])(
    'are refused where they are no JSON: %j',
    (text) => {
      expect(readValue(text)).toEqual({ ok: false });
    },
  );
});
