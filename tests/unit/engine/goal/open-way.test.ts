import { describe, expect, it } from 'vitest';
import { fallingWay } from '../../../../src/engine/goal/falling-way';
import { openWay } from '../../../../src/engine/goal/open-way';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import type { Point } from '../../../../src/engine/table/point';
import { tableShape } from '../../../../src/engine/table/table-shape';

const DEG = 180 / Math.PI;
const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);

function pocketNamed(name: string) {
  const pocket = SHAPE.pockets.find((one) => one.name === name);
  if (pocket === undefined) throw new Error(`no pocket ${name}`);
  return pocket;
}

function ways(from: Point, name: string) {
  const pocket = pocketNamed(name);
  const open = openWay(from, pocket, SHAPE, DEFAULT_KIT);
  const falling = fallingWay(from, pocket, SHAPE, DEFAULT_KIT);
  if (open === null || falling === null) throw new Error('closed');
  return { open, falling };
}

describe('what of a pocket is open', () => {
  it('is what its two points leave of the angle, worked out by hand for a middle pocket', () => {
    const { open } = ways({ x: 0, y: 0 }, 'middle-right');
    // The rounding's middle lies 3 mm behind the nose, and 3 mm · tan 38° beyond the unrounded point.
    const pointY = 0.1286 / 2 + 0.003 * Math.tan(38 / DEG);
    const pointX = 0.635 + 0.003;
    // A ball on the bed touches a nose 0.27 R above its middle: √(1 − 0.27²) R off its edge.
    const clearM = 0.028575 * Math.sqrt(1 - 0.27 ** 2) + 0.003;
    const half = Math.atan2(pointY, pointX) - Math.asin(clearM / Math.hypot(pointX, pointY));
    expect(open.halfAngleRad).toBeCloseTo(half, 9);
    expect(open.alongRad * DEG).toBeCloseTo(90, 9);
    expect(open.distanceM).toBeCloseTo(0.635 + 0.0048, 9);
  });

  it('is the way straight to a corner from the line that halves it', () => {
    // 45° from the far right corner of the noses, both ways alike.
    const { open, falling } = ways({ x: 0.635 - 0.6, y: 1.27 - 0.6 }, 'far-right');
    expect(open.alongRad * DEG).toBeCloseTo(45, 9);
    expect(falling.alongRad * DEG).toBeCloseTo(45, 0);
  });

  it('is nothing where the ball cannot pass the points', () => {
    const from = { x: 0.6, y: 0.5 };
    const middle = pocketNamed('middle-right');
    expect(openWay(from, middle, SHAPE, DEFAULT_KIT)).toBeNull();
    expect(fallingWay(from, middle, SHAPE, DEFAULT_KIT)).toBeNull();
  });

  it('is wide for a ball that hangs in the jaws', () => {
    const { open } = ways({ x: 0.637, y: 0 }, 'middle-right');
    expect(open.halfAngleRad * DEG).toBeGreaterThan(45);
  });
});

describe('what of a pocket takes a ball', () => {
  // Common practice, no source: a ball may touch a point and fall.
  it('is somewhat more than what is open', () => {
    for (const from of [
      { x: 0, y: 0.6 },
      { x: 0.3, y: 0.9 },
      { x: -0.2, y: -0.3 },
    ]) {
      const { open, falling } = ways(from, 'far-right');
      expect(falling.halfAngleRad).toBeGreaterThan(open.halfAngleRad);
      expect(falling.halfAngleRad).toBeLessThan(1.5 * open.halfAngleRad);
    }
  });

  // Common practice, no source: along a rail the near rail forgives, and the far jaw throws out.
  it('leans to the rail that a ball runs along', () => {
    const { open, falling } = ways({ x: 0.58, y: 0.4 }, 'far-right');
    // The rail is on the right of the way to the pocket.
    expect(falling.alongRad).toBeGreaterThan(open.alongRad);
  });
});

describe('what of a pocket takes a ball that comes at some speed', () => {
  // Common practice, no source: the softer a ball is played, the wider is the pocket.
  it('is less the harder it comes', () => {
    for (const from of [
      { x: 0.3, y: 0.9 },
      { x: 0.1, y: 1.1 },
      { x: 0.58, y: 0.4 },
    ]) {
      const widths = ways(from, 'far-right').falling.openings?.map((open) => open.halfAngleRad);
      const [soft, medium, firm] = widths ?? [];
      if (soft === undefined || medium === undefined || firm === undefined) throw new Error('few');
      expect(soft).toBeGreaterThan(medium);
      expect(firm).toBeLessThan(1.02 * medium);
    }
  });

  it('is at a medium speed what is told as open', () => {
    const { falling } = ways({ x: 0.58, y: 0.4 }, 'far-right');
    const medium = falling.openings?.find(({ speedMps }) => speedMps === 1.5);
    expect(medium?.middleRad).toBeCloseTo(0, 12);
    expect(medium?.halfAngleRad).toBe(falling.halfAngleRad);
  });
});
