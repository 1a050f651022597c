import { describe, expect, it } from 'vitest';
import { ballNear, ballSize, isBanded, pocketNear } from '../../../src/diagram/table-balls';
import { layOutTable } from '../../../src/diagram/table-map';

const RADIUS_M = 0.028575;
const NINE_FOOT = { lengthM: 2.54, widthM: 1.27 };
const PHONE = layOutTable(NINE_FOOT, { widthPx: 300, heightPx: 520, textPx: 13 });
const TABLET = layOutTable(NINE_FOOT, { widthPx: 700, heightPx: 1300, textPx: 13 });
const BALLS = [
  { name: 'cue', xM: 0, yM: 0 },
  { name: 7, xM: 0.1, yM: 0 },
] as const;

describe('balls on a drawn table', () => {
  it('are drawn true where that is large enough, and larger where it is not', () => {
    expect(ballSize(RADIUS_M, TABLET).radiusPx).toBeCloseTo(RADIUS_M * TABLET.pxPerM, 9);
    expect(ballSize(RADIUS_M, TABLET).enlarged).toBe(1);
    const { radiusPx, enlarged } = ballSize(RADIUS_M, PHONE);
    expect(radiusPx).toBeGreaterThan(RADIUS_M * PHONE.pxPerM);
    expect(radiusPx / enlarged).toBeCloseTo(RADIUS_M * PHONE.pxPerM, 9);
  });

  it('carry a band from 9 to 15', () => {
    expect(([1, 8, 9, 15, 'cue'] as const).map(isBanded)).toEqual([
      false,
      false,
      true,
      true,
      false,
    ]);
  });

  it('are found by a finger near by, the nearer of two, and not from afar', () => {
    const at = (xM: number) => PHONE.toPoint({ xM, yM: 0.01 });
    expect(ballNear(BALLS, at(0.04), PHONE, 26)).toBe('cue');
    expect(ballNear(BALLS, at(0.06), PHONE, 26)).toBe(7);
    expect(ballNear(BALLS, at(0.5), PHONE, 26)).toBeNull();
  });
});

it('a pocket is found by a finger on its hole', () => {
  const pockets = [
    { name: 'far-left', hole: { cx: 20, cy: 20, r: 9 }, mouth: { x: 25, y: 25 } },
  ] as const;
  expect(pocketNear(pockets, { x: 30, y: 30 }, 34)).toBe('far-left');
  expect(pocketNear(pockets, { x: 90, y: 30 }, 34)).toBeNull();
});
