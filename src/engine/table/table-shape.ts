import { isWithin, type Range } from '../numerics/range';
import { type CushionShape, cushionShape } from './cushion-shape';
import { type PocketShape, pocketShape } from './pocket-shape';
import {
  CUT_RANGES,
  POCKET_RANGES,
  POINT_RADIUS_RANGE,
  type PocketStandard,
  TABLE_RANGES,
} from './pocket-standard';
import type { Point } from './point';

/**
 * A table seen from above. The origin is its middle, y points away from the break end and x to the
 * right of one who stands there; so a kit's `bedSlope` says what its names say, along y and along x.
 */
export interface TableShape {
  /** Nose to nose, along y and along x. */
  readonly lengthM: number;
  readonly widthM: number;
  readonly cushions: readonly CushionShape[];
  readonly pockets: readonly PocketShape[];
}

/**
 * The cushions and pockets of a table.
 *
 * @param lengthM nose to nose, along y
 * @throws RangeError outside `TABLE_RANGES`, `POCKET_RANGES`, `CUT_RANGES` or `POINT_RADIUS_RANGE`
 */
export function tableShape(lengthM: number, widthM: number, standard: PocketStandard): TableShape {
  check('lengthM', lengthM, TABLE_RANGES.lengthM);
  check('widthM', widthM, TABLE_RANGES.widthM);
  check('pointRadiusM', standard.pointRadiusM, POINT_RADIUS_RANGE);
  for (const kind of ['corner', 'side'] as const) {
    check(`${kind}.mouthM`, standard[kind].mouthM, POCKET_RANGES.mouthM);
    check(`${kind}.shelfM`, standard[kind].shelfM, POCKET_RANGES.shelfM);
    check(`${kind}.cutRad`, standard[kind].cutRad, CUT_RANGES[kind]);
  }
  const pockets = pocketsOf(lengthM, widthM, standard);
  return { lengthM, widthM, pockets, cushions: cushionsOf(lengthM, widthM, standard) };
}

function check(name: string, value: number, range: Range): void {
  if (isWithin(range, value)) return;
  throw new RangeError(`${name} is ${value}, but must be from ${range.min} to ${range.max}`);
}

/** A corner's mouth lies askew: each nose stops short of the corner by this, m. */
function cornerSetback(standard: PocketStandard): number {
  return standard.corner.mouthM / Math.SQRT2;
}

function pocketsOf(lengthM: number, widthM: number, standard: PocketStandard): PocketShape[] {
  const { corner, side } = standard;
  const x = widthM / 2;
  const y = lengthM / 2;
  const inM = cornerSetback(standard) / 2;
  const out = Math.SQRT1_2;
  return [
    pocketShape('near-left', { x: inM - x, y: inM - y }, { x: -out, y: -out }, corner),
    pocketShape('near-right', { x: x - inM, y: inM - y }, { x: out, y: -out }, corner),
    pocketShape('middle-right', { x, y: 0 }, { x: 1, y: 0 }, side),
    pocketShape('far-right', { x: x - inM, y: y - inM }, { x: out, y: out }, corner),
    pocketShape('far-left', { x: inM - x, y: y - inM }, { x: -out, y: out }, corner),
    pocketShape('middle-left', { x: -x, y: 0 }, { x: -1, y: 0 }, side),
  ];
}

/** Counter-clockwise seen from above, so that the bed is on the left of one who walks along. */
function cushionsOf(lengthM: number, widthM: number, standard: PocketStandard): CushionShape[] {
  const x = widthM / 2;
  const y = lengthM / 2;
  const short = cornerSetback(standard);
  const half = standard.side.mouthM / 2;
  const corner = { cut: standard.corner, axisRad: Math.PI / 4 };
  const side = { cut: standard.side, axisRad: Math.PI / 2 };
  const { pointRadiusM } = standard;
  const at = (px: number, py: number): Point => ({ x: px, y: py });
  return [
    cushionShape('near', at(short - x, -y), corner, at(x - short, -y), corner, pointRadiusM),
    cushionShape('near-right', at(x, short - y), corner, at(x, -half), side, pointRadiusM),
    cushionShape('far-right', at(x, half), side, at(x, y - short), corner, pointRadiusM),
    cushionShape('far', at(x - short, y), corner, at(short - x, y), corner, pointRadiusM),
    cushionShape('far-left', at(-x, y - short), corner, at(-x, half), side, pointRadiusM),
    cushionShape('near-left', at(-x, -half), side, at(-x, short - y), corner, pointRadiusM),
  ];
}
