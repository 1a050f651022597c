import type { Kit } from '../kit/kit';
import { nearestOnCushion, newNearest } from '../table/nearest-on-cushion';
import type { Point } from '../table/point';
import type { TableShape } from '../table/table-shape';

/** Closer than this, m, is still touching: places are told in decimals. */
export const TOUCHING_M = 1e-7;

/**
 * How far from a cushion's edge, seen from above, the centre of a ball that touches it is, m: the
 * nose is higher than the centre, so that is less than the radius.
 */
export function touchingM({ cushion, ballRadiusM }: Kit): number {
  const rise = cushion.noseHeight - 1;
  return ballRadiusM * Math.sqrt(1 - rise * rise);
}

/** The cushion nearest to a place: how far off its edge is, m, and the unit vector to it. */
export function nearestCushion(shape: TableShape, xM: number, yM: number) {
  let best = { awayM: Number.POSITIVE_INFINITY, nx: 0, ny: 0 };
  const nearest = newNearest();
  for (const cushion of shape.cushions) {
    nearestOnCushion(cushion, xM, yM, nearest);
    const { awayM, nx, ny } = nearest;
    if (awayM < best.awayM) best = { awayM, nx, ny };
  }
  return best;
}

/** The shortest distance between two straight pieces, a to b and c to d, m. */
export function piecesApart(a: Point, b: Point, c: Point, d: Point): number {
  if (doCross(a, b, c, d)) return 0;
  return Math.min(
    fromPiece(a, c, d).apartM,
    fromPiece(b, c, d).apartM,
    fromPiece(c, a, b).apartM,
    fromPiece(d, a, b).apartM,
  );
}

/** How far a place is from a straight piece, and how far along that its nearest place is, m. */
export function fromPiece(place: Point, from: Point, to: Point) {
  const [wayX, wayY] = [to.x - from.x, to.y - from.y];
  const lengthM = Math.hypot(wayX, wayY);
  const [dx, dy] = [place.x - from.x, place.y - from.y];
  const projected = lengthM > 0 ? (dx * wayX + dy * wayY) / lengthM : 0;
  const alongM = Math.min(lengthM, Math.max(0, projected));
  const share = lengthM > 0 ? alongM / lengthM : 0;
  return { apartM: Math.hypot(dx - share * wayX, dy - share * wayY), alongM };
}

function doCross(a: Point, b: Point, c: Point, d: Point): boolean {
  return (
    Math.sign(turn(a, b, c)) * Math.sign(turn(a, b, d)) < 0 &&
    Math.sign(turn(c, d, a)) * Math.sign(turn(c, d, b)) < 0
  );
}

/** + where c lies to the left of the way from a to b. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
