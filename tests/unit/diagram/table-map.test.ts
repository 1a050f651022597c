import { describe, expect, it } from 'vitest';
import { endWords, layOutTable, stepOnTable } from '../../../src/diagram/table-map';

const NINE_FOOT = { lengthM: 2.54, widthM: 1.27 };
const UPRIGHT = { widthPx: 300, heightPx: 560, textPx: 13 };
const LYING = { widthPx: 460, heightPx: 300, textPx: 13 };

describe('the map of a table', () => {
  it.each([
    ['upright', UPRIGHT],
    ['lying', LYING],
    ['tiny', { widthPx: 40, heightPx: 60, textPx: 13 }],
  ])('keeps rails and words on a canvas that is %s', (_, canvas) => {
    const { frame, endLabel } = layOutTable(NINE_FOOT, canvas);
    expect(frame.x).toBeGreaterThanOrEqual(-1e-9);
    expect(frame.y).toBeGreaterThanOrEqual(-1e-9);
    expect(frame.x + frame.width).toBeLessThanOrEqual(canvas.widthPx + 1e-9);
    expect(endLabel.y).toBeLessThanOrEqual(canvas.heightPx);
  });

  it('has the break end below and right on the right where it stands upright', () => {
    const { isTurned, toPoint, bed } = layOutTable(NINE_FOOT, UPRIGHT);
    expect(isTurned).toBe(false);
    const nearRight = toPoint({ xM: 1.27 / 2, yM: -2.54 / 2 });
    expect(nearRight.x).toBeCloseTo(bed.x + bed.width, 9);
    expect(nearRight.y).toBeCloseTo(bed.y + bed.height, 9);
    expect(bed.height / bed.width).toBeCloseTo(2, 9);
  });

  it('has the break end on the left where it lies: right of one who stands there is below', () => {
    const { isTurned, toPoint, bed } = layOutTable(NINE_FOOT, LYING);
    expect(isTurned).toBe(true);
    const nearRight = toPoint({ xM: 1.27 / 2, yM: -2.54 / 2 });
    expect(nearRight.x).toBeCloseTo(bed.x, 9);
    expect(nearRight.y).toBeCloseTo(bed.y + bed.height, 9);
  });

  it.each([UPRIGHT, LYING])('finds the spot of a point again', (canvas) => {
    const { toPoint, toSpot } = layOutTable(NINE_FOOT, canvas);
    const spot = toSpot(toPoint({ xM: 0.31, yM: -0.77 }));
    expect(spot.xM).toBeCloseTo(0.31, 9);
    expect(spot.yM).toBeCloseTo(-0.77, 9);
  });

  it.each([
    ['right', UPRIGHT, 1, 0],
    ['right', LYING, 1, 0],
    ['up', UPRIGHT, 0, 1],
    ['up', LYING, 0, 1],
  ])('steps %s as seen on the screen', (_, canvas, rightwards, upwards) => {
    const { isTurned, toPoint, pxPerM } = layOutTable(NINE_FOOT, canvas);
    const { rightM, upM } = stepOnTable(isTurned, 0.01 * rightwards, 0.01 * upwards);
    const from = toPoint({ xM: 0, yM: 0 });
    const to = toPoint({ xM: rightM, yM: upM });
    expect(to.x - from.x).toBeCloseTo(0.01 * rightwards * pxPerM, 9);
    expect(from.y - to.y).toBeCloseTo(0.01 * upwards * pxPerM, 9);
  });
});

describe('the words under a table', () => {
  const lying = layOutTable(
    { lengthM: 2.54, widthM: 1.27 },
    { widthPx: 360, heightPx: 215, textPx: 13 },
  );

  it('say which side is left where it lies, and less of it where letters are large', () => {
    expect(endWords(lying, 13)).toEqual(['from the break end, left is up', 'far end']);
    expect(endWords(lying, 26)).toEqual(['break end', 'far end']);
    expect(endWords(lying, 60)).toEqual(['break end', '']);
  });

  it('name the break end alone where it stands, its left on the left', () => {
    const upright = layOutTable(
      { lengthM: 2.54, widthM: 1.27 },
      { widthPx: 300, heightPx: 560, textPx: 13 },
    );
    expect(endWords(upright, 13)).toEqual(['break end', '']);
  });
});
