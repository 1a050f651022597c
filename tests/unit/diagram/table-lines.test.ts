import { describe, expect, it } from 'vitest';
import { layOutShot } from '../../../src/diagram/table-lines';
import { layOutTable } from '../../../src/diagram/table-map';
import type { PositionShot } from '../../../src/engine/goal/position-shot';
import { WPA_POCKETS } from '../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../src/engine/table/table-shape';

const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const MAP = layOutTable(SHAPE, { widthPx: 300, heightPx: 560, textPx: 13 });
const BALLS = [
  { name: 'cue', xM: 0, yM: -0.6 },
  { name: 4, xM: 0, yM: 0.4 },
  { name: 9, xM: 0.02, yM: 0.1 },
] as const;
/** Straight up the table's middle line; numbers by hand. */
const SHOT: PositionShot = {
  ok: true,
  distanceM: 0.9,
  cutRad: 0.3,
  headingRad: 0,
  ghost: { xM: 0, yM: 0.3 },
  target: { kind: 'mouth', distanceM: 0.9, mouthM: 0.1 },
  inTheWay: [
    { mover: 'cue', what: 9 },
    { mover: 'object', what: 'jaw' },
  ],
  least: { elevationRad: 0.05, over: 'nothing' },
  bridge: 'on-the-bed',
};
const ASKED = { shot: SHOT, balls: BALLS, ball: 4, pocket: 'far-right', aimRad: null } as const;

describe('a shot over its table', () => {
  it('runs from the cue ball to the ghost ball, and from the ball to the pocket’s mouth', () => {
    const lines = layOutShot(ASKED, SHAPE, MAP);
    expect(lines?.straight).toEqual({ from: MAP.toPoint(BALLS[0]), to: MAP.toPoint(SHOT.ghost) });
    expect(lines?.target.from).toEqual(MAP.toPoint(BALLS[1]));
    // Half of 82 mm short of the corner, both ways.
    const short = 0.1159 / Math.SQRT2 / 2;
    const mouth = MAP.toPoint({ xM: 0.635 - short, yM: 1.27 - short });
    expect(lines?.target.to.x).toBeCloseTo(mouth.x, 9);
    expect(lines?.target.to.y).toBeCloseTo(mouth.y, 9);
  });

  it('marks what is in the way where it lies', () => {
    const lines = layOutShot(ASKED, SHAPE, MAP);
    expect(lines?.inTheWay).toEqual([MAP.toPoint(BALLS[2]), lines?.target.to]);
  });

  it('points the cue as far right of the straight line as the way says', () => {
    expect(layOutShot(ASKED, SHAPE, MAP)?.aim).toBeNull();
    const aim = layOutShot({ ...ASKED, aimRad: 0.1 }, SHAPE, MAP)?.aim;
    // 0.9 m at a tenth of a radian.
    expect(((aim?.to.x ?? 0) - (aim?.from.x ?? 0)) / MAP.pxPerM).toBeCloseTo(0.0899, 4);
  });

  it('is not drawn where its ball is gone', () => {
    expect(layOutShot({ ...ASKED, ball: 5 }, SHAPE, MAP)).toBeNull();
  });
});
