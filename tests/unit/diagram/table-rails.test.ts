import { describe, expect, it } from 'vitest';
import { layOutTable } from '../../../src/diagram/table-map';
import { layOutRails } from '../../../src/diagram/table-rails';
import { WPA_POCKETS } from '../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../src/engine/table/table-shape';

const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const MAP = layOutTable(SHAPE, { widthPx: 300, heightPx: 560, textPx: 13 });
const RAILS = layOutRails(SHAPE, MAP);

/** The numbers of a path as points. */
function pointsOf(path: string) {
  return path
    .replace(/[MZ]/g, '')
    .split('L')
    .map((pair) => pair.split(' ').map(Number))
    .map(([x = Number.NaN, y = Number.NaN]) => ({ x, y }));
}

describe('the rails of a table', () => {
  it('have six cushions of a jaw, a nose and a jaw each, and six pockets', () => {
    expect(RAILS.noses.map((nose) => pointsOf(nose).length)).toEqual([4, 4, 4, 4, 4, 4]);
    expect(RAILS.pockets.map(({ name }) => name).sort()).toEqual([
      'far-left',
      'far-right',
      'middle-left',
      'middle-right',
      'near-left',
      'near-right',
    ]);
  });

  it('run along the edge of the bed, to a pixel', () => {
    const [near = ''] = RAILS.noses;
    const [, from, to] = pointsOf(near);
    expect(Math.abs((from?.y ?? 0) - MAP.bed.y - MAP.bed.height)).toBeLessThan(1);
    expect(to?.y).toBeCloseTo(from?.y ?? 0, 9);
    // A corner mouth of 115.9 mm, askew, keeps a nose 82 mm short of the corner.
    const cornerPx = (0.1159 / Math.SQRT2) * MAP.pxPerM;
    expect((from?.x ?? 0) - MAP.bed.x).toBeGreaterThan(cornerPx - 1);
    expect((from?.x ?? 0) - MAP.bed.x).toBeLessThan(cornerPx + 1);
  });

  it('open into holes that lie outside the bed', () => {
    for (const { hole } of RAILS.pockets) {
      const isInside =
        hole.cx > MAP.bed.x &&
        hole.cx < MAP.bed.x + MAP.bed.width &&
        hole.cy > MAP.bed.y &&
        hole.cy < MAP.bed.y + MAP.bed.height;
      expect(isInside).toBe(false);
    }
  });

  it('carry seven diamonds along and three across, in the middle of the rail', () => {
    expect(RAILS.diamonds).toHaveLength(2 * 7 + 2 * 3);
    const leftmost = Math.min(...RAILS.diamonds.map(({ x }) => x));
    expect(leftmost).toBeCloseTo(MAP.frame.x + MAP.railPx / 2, 9);
  });
});
