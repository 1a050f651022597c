import { describe, expect, it } from 'vitest';
import { placesOf, strokeAt, usualGrid } from '../../../../src/engine/plan/option-grid';

const LEVEL_RAD = 0.05;
const grid = usualGrid(LEVEL_RAD);
const strokes = Array.from({ length: placesOf(grid) }, (_, place) => strokeAt(grid, place));
const held = strokes.flatMap((stroke) => stroke ?? []);

describe('the usual grid', () => {
  it('holds ten thousand strokes that a tip can hold', () => {
    expect(held.length).toBeGreaterThan(10_000);
    for (const { side, height } of held) expect(Math.hypot(side, height)).toBeLessThan(0.5);
  });

  it('holds the plain stroke without side and every one as its mirror image', () => {
    expect(held.some(({ side, height }) => side === 0 && height === 0)).toBe(true);
    const key = (side: number, rest: object) => JSON.stringify([Math.abs(side), side < 0, rest]);
    const all = new Set(held.map(({ side, ...rest }) => key(side, rest)));
    for (const { side, ...rest } of held) {
      if (side !== 0) expect(all.has(key(-side, rest))).toBe(true);
    }
  });

  it('never lowers the cue below what the position needs', () => {
    for (const { elevationRad } of held) expect(elevationRad).toBeGreaterThanOrEqual(LEVEL_RAD);
    const over = usualGrid(0.3);
    expect(Math.min(...over.elevationsRad)).toBe(0.3);
  });

  it('has each stroke once', () => {
    const all = held.map((stroke) => JSON.stringify(stroke));
    expect(new Set(all).size).toBe(held.length);
  });
});
