import type { BallName, NamedBall } from '../engine/lie/position';
import type { PocketName } from '../engine/table/pocket-shape';
import type { TableShape } from '../engine/table/table-shape';
import type { Point } from './canvas';
import { railPoint } from './rail-point';
import type { TableMap } from './table-map';
import { pathThrough } from './table-rails';

/** A way kept to be played again on a table, px. */
export interface DrillView {
  readonly balls: readonly (Point & { readonly name: BallName })[];
  readonly radiusPx: number;
  /** From the cue ball to where the cue points; may be empty. */
  readonly path: string;
  /** Around the pocket played into; null where there is none. */
  readonly ring: { readonly cx: number; readonly cy: number; readonly r: number } | null;
}

interface Laid {
  readonly balls: readonly NamedBall[];
  readonly goal: { readonly pocket: PocketName | null };
}

/** In smaller balls no number could be read. */
const LEAST_PX = 7.5;
const BALL_RADIUS_M = 0.0286;
const RING_PX = 3.5;

/** @param headingRad where the cue points over the table; null: no line of it is drawn */
export function layOutDrill(
  { balls, goal }: Laid,
  headingRad: number | null,
  shape: TableShape,
  map: TableMap,
): DrillView {
  const pocket = shape.pockets.find(({ name }) => name === goal.pocket);
  const cue = balls.find(({ name }) => name === 'cue');
  const hole = pocket && map.toPoint({ xM: pocket.drop.x, yM: pocket.drop.y });
  const points =
    cue && headingRad !== null
      ? [cue, railPoint(cue, headingRad, shape).spot].map(map.toPoint)
      : [];
  return {
    balls: balls.map((one) => ({ ...map.toPoint(one), name: one.name })),
    radiusPx: Math.max(LEAST_PX, BALL_RADIUS_M * map.pxPerM),
    path: pathThrough(points),
    ring:
      pocket && hole
        ? { cx: hole.x, cy: hole.y, r: pocket.dropRadiusM * map.pxPerM + RING_PX }
        : null,
  };
}
