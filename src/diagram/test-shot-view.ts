import type { LevelShot } from '../engine/player/level-test';
import { DIAMONDS_ACROSS, DIAMONDS_ALONG } from '../engine/table/diamonds';
import type { TableShape } from '../engine/table/table-shape';
import type { Point } from './canvas';
import type { BedSpot } from './table-diamonds';
import type { TableMap } from './table-map';
import { pathThrough } from './table-rails';

/** A shot of the level test on a table, px; paths as SVG writes them. */
export interface TestShotView {
  readonly cueBall: Point;
  readonly ball: Point;
  readonly radiusPx: number;
  /** From the cue ball to the ball, and on to the pocket. */
  readonly way: string;
  /** From the break end's and the left rail's diamond to where each ball lies, with their counts. */
  readonly guides: readonly Guide[];
  /** Around the pocket played into. */
  readonly ring: { readonly cx: number; readonly cy: number; readonly r: number };
}

interface Guide {
  readonly path: string;
  readonly counts: readonly (Point & { readonly count: number })[];
}

/** So small a drawing shows balls larger than they are. */
const LEAST_PX = 6;
const RING_PX = 3.5;

/** Where a spot lies, in diamonds from the left and from the break end. */
export function crossingOf(
  { xM, yM }: BedSpot,
  { lengthM, widthM }: Pick<TableShape, 'lengthM' | 'widthM'>,
): { readonly across: number; readonly along: number } {
  return {
    across: Math.round((xM / widthM + 0.5) * DIAMONDS_ACROSS),
    along: Math.round((yM / lengthM + 0.5) * DIAMONDS_ALONG),
  };
}

/** Null where the shot lacks a ball or the table the pocket. */
export function layOutTestShot(
  { position, goal, kit }: Pick<LevelShot, 'position' | 'goal' | 'kit'>,
  shape: TableShape,
  map: TableMap,
): TestShotView | null {
  const cue = position.find(({ name }) => name === 'cue');
  const object = position.find(({ name }) => name === goal.ball);
  const pocket = shape.pockets.find(({ name }) => name === goal.pocket);
  if (!cue || !object || !pocket) return null;
  const asideM = map.railPx / map.pxPerM / 2;
  const guide = (spot: BedSpot): Guide => {
    const { across, along } = crossingOf(spot, shape);
    const nose = { xM: spot.xM, yM: -shape.lengthM / 2 };
    const side = { xM: -shape.widthM / 2, yM: spot.yM };
    return {
      path: pathThrough([nose, spot, side].map(map.toPoint)),
      counts: [
        { count: across, ...map.toPoint({ ...nose, yM: nose.yM - asideM }) },
        { count: along, ...map.toPoint({ ...side, xM: side.xM - asideM }) },
      ],
    };
  };
  const [cueBall, ball] = [map.toPoint(cue), map.toPoint(object)];
  const mouth = map.toPoint({ xM: pocket.mouth.x, yM: pocket.mouth.y });
  const hole = map.toPoint({ xM: pocket.drop.x, yM: pocket.drop.y });
  return {
    cueBall,
    ball,
    radiusPx: Math.max(LEAST_PX, kit.ballRadiusM * map.pxPerM),
    way: pathThrough([cueBall, ball, mouth]),
    guides: [guide(cue), guide(object)],
    ring: { cx: hole.x, cy: hole.y, r: pocket.dropRadiusM * map.pxPerM + RING_PX },
  };
}
