import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { offFinger } from '../../../src/diagram/off-finger';

const CANVAS = { widthPx: 336, heightPx: 168, textPx: 13 };
const NOTE = { widthPx: 110, heightPx: 54, isTall: false, freeSide: -1, abovePx: 0 } as const;
/** A thumb covers about so much to either side of where it touches (common practice, no source). */
const COVERED_PX = 22;

describe('a note about what a finger drags', () => {
  it('stands over the finger where there is the height', () => {
    const { x, y } = offFinger({ x: 160, y: 140 }, NOTE, CANVAS);
    expect(x + NOTE.widthPx / 2).toBeCloseTo(160, 9);
    expect(y + NOTE.heightPx).toBeLessThan(140 - COVERED_PX);
  });

  it('stands beside it where there is not, on the side that the hand leaves free', () => {
    const at = { x: 168, y: 40 };
    expect(offFinger(at, NOTE, CANVAS).x + NOTE.widthPx).toBeLessThan(at.x - COVERED_PX);
    expect(offFinger(at, { ...NOTE, freeSide: 1 }, CANVAS).x).toBeGreaterThan(at.x + COVERED_PX);
    // Where that side has no room it is the other.
    expect(offFinger({ x: 60, y: 40 }, NOTE, CANVAS).x).toBeGreaterThan(60 + COVERED_PX);
  });

  it('lies in the drawing, and never under the thumb, wherever that is', () => {
    const points = fc.record({
      x: fc.double({ min: 0, max: CANVAS.widthPx, noNaN: true }),
      y: fc.double({ min: 0, max: CANVAS.heightPx, noNaN: true }),
    });
    const notes = fc.record({
      isTall: fc.boolean(),
      freeSide: fc.constantFrom(1 as const, -1 as const),
      abovePx: fc.constantFrom(0, 80),
    });
    fc.assert(
      fc.property(points, notes, (at, how) => {
        const note = { ...NOTE, ...how };
        const { x, y } = offFinger(at, note, CANVAS);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x + note.widthPx).toBeLessThanOrEqual(CANVAS.widthPx + 1e-9);
        expect(y).toBeGreaterThanOrEqual(-note.abovePx);
        const isClear =
          x + note.widthPx <= at.x - COVERED_PX ||
          x >= at.x + COVERED_PX ||
          y + note.heightPx <= at.y - COVERED_PX;
        expect(isClear).toBe(true);
      }),
    );
  });
});
