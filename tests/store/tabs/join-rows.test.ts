import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joinRows } from '../../../src/store/tabs/join-rows';

const value = fc.integer({ min: 0, max: 3 });
const row = fc.record({ a: value, b: value, nested: fc.record({ c: value, d: value }) });
type Row = typeof row extends fc.Arbitrary<infer R> ? R : never;
const leaves = ({ a, b, nested }: Row) => [a, b, nested.c, nested.d];

describe('joining two states of a row', () => {
  it('keeps every field that one of them changed, and mine where both did', () => {
    fc.assert(
      fc.property(row, row, row, (was, mine, theirs) => {
        const joined = joinRows(was, mine, theirs);
        const clashes = leaves(was).map((before, at) => {
          const [here, there] = [leaves(mine)[at], leaves(theirs)[at]];
          expect(leaves(joined.row)[at]).toBe(here === before ? there : here);
          return here !== before && there !== before && here !== there;
        });
        expect(joined.isClash).toBe(clashes.includes(true));
      }),
    );
  });

  it('of which one changed nothing is the other', () => {
    fc.assert(
      fc.property(row, row, (was, now) => {
        expect(joinRows(was, was, now)).toEqual({ row: now, isClash: false });
        expect(joinRows(was, now, was)).toEqual({ row: now, isClash: false });
      }),
    );
  });

  it('takes a ball, a zone and a held shot for one thing each', () => {
    const ball = (name: number, xM: number, yM: number) => ({ name, xM, yM });
    const was = { balls: [ball(1, 0, 0), ball(2, 0, 0)], zone: { xM: 0, radiusM: 1 } };
    const mine = {
      balls: [ball(1, 5, 0), ball(2, 0, 0), ball(3, 1, 1)],
      zone: { xM: 2, radiusM: 1 },
    };
    const theirs = { balls: [ball(1, 0, 7)], zone: { xM: 0, radiusM: 3 } };
    expect(joinRows(was, mine, theirs)).toEqual({
      row: { balls: [ball(1, 5, 0), ball(3, 1, 1)], zone: { xM: 2, radiusM: 1 } },
      isClash: true,
    });
  });

  it('puts the changes of a cue in the order of their times', () => {
    const change = (atMs: number) => ({ atMs, what: 'new tip' });
    const was = { changes: [change(1)] };
    const [mine, theirs] = [
      { changes: [change(1), change(9)] },
      { changes: [change(1), change(5)] },
    ];
    expect(joinRows(was, mine, theirs)).toEqual({
      row: { changes: [change(1), change(5), change(9)] },
      isClash: false,
    });
  });
});
