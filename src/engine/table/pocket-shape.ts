import { grown, type PlanBox, pointBox } from './plan-box';
import type { PocketCut } from './pocket-standard';
import type { Point } from './point';

/** Near is the break end; left and right are those of one who stands there. */
export type PocketName =
  | 'near-left'
  | 'near-right'
  | 'middle-right'
  | 'far-right'
  | 'far-left'
  | 'middle-left';

/** Where a ball may fall, seen from above. */
export interface PocketShape {
  readonly name: PocketName;
  /** Half-way between the points of its two cushions. */
  readonly mouth: Point;
  readonly mouthM: number;
  /** Unit vector into the pocket. */
  readonly axis: Point;
  /** Middle of the hole in the bed, and its radius, m. A ball whose centre is over it falls. */
  readonly drop: Point;
  readonly dropRadiusM: number;
  /** Holds all of the hole. */
  readonly box: PlanBox;
}

/**
 * A pocket from the middle of its mouth. The edge of the bed is taken for a circle half as wide as
 * the mouth in radius, a shelf's depth beyond the mouth; what a standard says of it is that depth.
 */
export function pocketShape(
  name: PocketName,
  mouth: Point,
  axis: Point,
  cut: PocketCut,
): PocketShape {
  const depthM = dropDepth(cut);
  const drop = { x: mouth.x + depthM * axis.x, y: mouth.y + depthM * axis.y };
  const dropRadiusM = dropRadius(cut);
  return {
    name,
    mouth,
    mouthM: cut.mouthM,
    axis,
    drop,
    dropRadiusM,
    box: grown(pointBox(drop.x, drop.y), dropRadiusM),
  };
}

function dropRadius(cut: PocketCut): number {
  return cut.mouthM / 2;
}

/** From the mouth to the middle of the hole, m. The jaws reach as deep, so nothing gets behind them. */
export function dropDepth(cut: PocketCut): number {
  return cut.shelfM + dropRadius(cut);
}

/** How far a place lies beyond the mouth (+) and how far to either side of its middle, m. */
export function placeInMouth(
  pocket: PocketShape,
  xM: number,
  yM: number,
): { readonly beyondM: number; readonly asideM: number } {
  const dx = xM - pocket.mouth.x;
  const dy = yM - pocket.mouth.y;
  return {
    beyondM: dx * pocket.axis.x + dy * pocket.axis.y,
    asideM: Math.abs(dx * pocket.axis.y - dy * pocket.axis.x),
  };
}
