import { describe, expect, it } from 'vitest';
import type { CushionName } from '../../../../src/engine/table/cushion-shape';
import { nearestOnCushion, newNearest } from '../../../../src/engine/table/nearest-on-cushion';
import type { PocketName } from '../../../../src/engine/table/pocket-shape';
import { TABLE_SIZES, WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';

/** Sharp points, so that lines can be laid with a ruler. */
const SHARP = { ...WPA_POCKETS, pointRadiusM: 0 };
const SHAPE = tableShape(2.54, 1.27, SHARP);
const DEG = Math.PI / 180;

const found = <T extends { readonly name: string }>(list: readonly T[], name: string): T => {
  const one = list.find((each) => each.name === name);
  if (one === undefined) throw new RangeError(`there is no ${name}`);
  return one;
};
const cushion = (name: CushionName) => found(SHAPE.cushions, name);
const pocket = (name: PocketName) => found(SHAPE.pockets, name);

/** First and last place of a piece of a cushion. */
function ends(name: CushionName, index: number) {
  const piece = cushion(name).core[index];
  if (piece === undefined) throw new RangeError(`no piece ${index}`);
  const { fromX, fromY, alongX, alongY, lengthM } = piece;
  return {
    from: [fromX, fromY],
    to: [fromX + lengthM * alongX, fromY + lengthM * alongY],
  } as const;
}

const apart = (a: readonly [number, number], b: readonly [number, number]) =>
  Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Angle at b between a and c, degrees. */
function angleAt(
  a: readonly [number, number],
  b: readonly [number, number],
  c: readonly [number, number],
): number {
  const dot = (a[0] - b[0]) * (c[0] - b[0]) + (a[1] - b[1]) * (c[1] - b[1]);
  return Math.acos(dot / (apart(a, b) * apart(c, b))) / DEG;
}

describe('the noses of a nine-foot table', () => {
  it('lie 1.27 m apart across and 2.54 m along, on the lines x = ±0.635 and y = ±1.27', () => {
    expect(ends('near', 1).from[1]).toBe(-1.27);
    expect(ends('far', 1).to[1]).toBe(1.27);
    expect(ends('near-right', 1).from[0]).toBe(0.635);
    expect(ends('far-left', 1).to[0]).toBe(-0.635);
  });

  it('stop at the corners a mouth apart', () => {
    expect(apart(ends('near', 1).to, ends('near-right', 1).from)).toBeCloseTo(0.1159, 12);
    expect(apart(ends('far', 1).to, ends('far-left', 1).from)).toBeCloseTo(0.1159, 12);
  });

  it('stop in the middle a side mouth apart, half of it on each side', () => {
    expect(ends('near-right', 1).to[1]).toBeCloseTo(-0.0643, 12);
    expect(ends('far-right', 1).from[1]).toBeCloseTo(0.0643, 12);
  });
});

describe('the jaws', () => {
  it('turn by the cut at each point: 142° at the corners, 104° at the sides', () => {
    const near = { nose: ends('near', 1), jaw: ends('near', 2) };
    expect(angleAt(near.nose.from, near.nose.to, near.jaw.to)).toBeCloseTo(142, 9);
    const side = { nose: ends('near-right', 1), jaw: ends('near-right', 2) };
    expect(angleAt(side.nose.from, side.nose.to, side.jaw.to)).toBeCloseTo(104, 9);
  });

  it('run away from the bed, and narrow the pocket', () => {
    const [a, b] = [ends('near', 2), ends('near-right', 0)];
    expect(a.to[1]).toBeLessThan(-1.27);
    expect(b.from[0]).toBeGreaterThan(0.635);
    // Twice tan 7° for each of the 99.25 mm (shelf 41.3 and half the mouth 57.95) that they run in.
    expect(apart(a.to, b.from)).toBeCloseTo(0.1159 - 2 * 0.09925 * Math.tan(7 * DEG), 9);
  });

  it('leave a ball of 57 mm room all the way to the hole', () => {
    expect(apart(ends('near', 2).to, ends('near-right', 0).from)).toBeGreaterThan(0.058);
    expect(apart(ends('near-right', 2).to, ends('far-right', 0).from)).toBeGreaterThan(0.058);
  });
});

describe('the holes', () => {
  it('begin a shelf beyond the middle of the mouth', () => {
    const { mouth, axis, drop, dropRadiusM } = pocket('far-right');
    const edge = { x: drop.x - dropRadiusM * axis.x, y: drop.y - dropRadiusM * axis.y };
    expect(Math.hypot(edge.x - mouth.x, edge.y - mouth.y)).toBeCloseTo(0.0413, 12);
    const middle = pocket('middle-left');
    expect(middle.drop.x + middle.dropRadiusM).toBeCloseTo(-0.635 - 0.0048, 12);
  });

  it('lie on the diagonals at the corners, where both noses are equally far', () => {
    for (const name of ['near-left', 'near-right', 'far-left', 'far-right'] as const) {
      const { drop } = pocket(name);
      expect(Math.abs(drop.x) - 0.635).toBeCloseTo(Math.abs(drop.y) - 1.27, 12);
    }
  });

  it('are named as one at the break end sees them', () => {
    expect(pocket('near-left').drop.x).toBeLessThan(0);
    expect(pocket('near-left').drop.y).toBeLessThan(0);
    expect(pocket('far-right').drop.x).toBeGreaterThan(0);
    expect(pocket('far-right').drop.y).toBeGreaterThan(0);
  });
});

describe('a rounded point', () => {
  it('lies nearer to the cushion than the sharp one, by ρ (1 / sin (cut / 2) − 1)', () => {
    const round = tableShape(2.54, 1.27, WPA_POCKETS);
    const nearest = newNearest();
    const { to } = ends('near-right', 1);
    nearestOnCushion(found(round.cushions, 'near-right'), to[0], to[1], nearest);
    expect(nearest.part).toBe('point');
    expect(nearest.awayM).toBeCloseTo(0.003 * (1 / Math.sin(52 * DEG) - 1), 12);
  });
});

describe('nearestOnCushion', () => {
  const nearest = newNearest();

  it('tells nose, jaw and point apart, and the way there', () => {
    nearestOnCushion(cushion('near'), 0.1, -1.17, nearest);
    expect(nearest.part).toBe('nose');
    expect(nearest.nx).toBeCloseTo(0, 12);
    expect(nearest.ny).toBeCloseTo(-1, 12);
    expect(nearest.awayM).toBeCloseTo(0.1, 12);
    nearestOnCushion(cushion('far-right'), 0.65, 0, nearest);
    expect(nearest.part).toBe('jaw');
    nearestOnCushion(cushion('far-right'), 0.6, 0.0643, nearest);
    expect(nearest.part).toBe('point');
  });
});

describe('tableShape', () => {
  it.each(Object.entries(TABLE_SIZES))('is twice as long as wide for %s', (_, size) => {
    const shape = tableShape(size.lengthM, size.widthM, WPA_POCKETS);
    expect(shape.lengthM).toBe(2 * shape.widthM);
    expect(shape.cushions).toHaveLength(6);
    expect(shape.pockets).toHaveLength(6);
  });

  it('takes another proportion', () => {
    expect(tableShape(1.9812, 0.9652, WPA_POCKETS).cushions).toHaveLength(6);
  });

  it.each([
    ['lengthM', () => tableShape(9, 1.27, WPA_POCKETS)],
    ['widthM', () => tableShape(2.54, Number.NaN, WPA_POCKETS)],
    ['pointRadiusM', () => tableShape(2.54, 1.27, { ...WPA_POCKETS, pointRadiusM: 0.1 })],
    [
      'corner.mouthM',
      () => tableShape(2.54, 1.27, { ...SHARP, corner: { ...SHARP.corner, mouthM: 0.3 } }),
    ],
    ['side.cutRad', () => tableShape(2.54, 1.27, { ...SHARP, side: { ...SHARP.side, cutRad: 3 } })],
  ])('throws at a %s out of range, and names it', (name, make) => {
    expect(make).toThrow(RangeError);
    expect(make).toThrow(name);
  });
});
