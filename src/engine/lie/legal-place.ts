import type { Kit } from '../kit/kit';
import { isOnBed } from '../table/check-table';
import type { CorePiece } from '../table/cushion-shape';
import type { TableShape } from '../table/table-shape';
import { without } from './balls-of';
import { TOUCHING_M, touchingM } from './clearances';
import { type Edge, meetingsOf, nearestOn } from './place-edges';
import type { BallName, Position } from './position';

/** Where a ball's centre is put, m. */
export interface Place {
  readonly xM: number;
  readonly yM: number;
}

/** Whether a ball may lie there: free on the bed, and in no other ball. */
export function isLegal(place: Place, others: Position, shape: TableShape, kit: Kit): boolean {
  const leastM = 2 * kit.ballRadiusM - TOUCHING_M;
  const isClear = ({ xM, yM }: Place) => Math.hypot(xM - place.xM, yM - place.yM) >= leastM;
  return others.every(isClear) && isOnBed(place, kit, shape);
}

/**
 * The legal place nearest to one that is wanted for a ball: itself, or the nearest place where it
 * touches a ball or a cushion, or two of them. Null where nothing is free.
 */
export function legalPlace(
  position: Position,
  name: BallName,
  wanted: Place,
  shape: TableShape,
  kit: Kit,
): Place | null {
  if (!Number.isFinite(wanted.xM) || !Number.isFinite(wanted.yM)) return null;
  const others = without(position, name);
  if (isLegal(wanted, others, shape, kit)) return wanted;
  const apartM = ({ xM, yM }: Place) => Math.hypot(xM - wanted.xM, yM - wanted.yM);
  const nearestIn = (edges: readonly Edge[]) =>
    [...edges.map((edge) => nearestOn(edge, wanted)), ...meetings(edges)]
      .sort((a, b) => apartM(a) - apartM(b))
      .find((place) => isLegal(place, others, shape, kit));
  const edges = edgesOf(others, shape, kit);
  const near = nearestIn(edges.filter((edge) => apartM(nearestOn(edge, wanted)) < NEAR_M));
  if (near !== undefined && apartM(near) < NEAR_M) return near;
  return nearestIn(edges) ?? null;
}

/** Edges farther than this, m, are only looked at where no place is found nearer. */
const NEAR_M = 0.15;

function meetings(edges: readonly Edge[]): Place[] {
  return edges.flatMap((edge, index) =>
    edges.slice(index + 1).flatMap((other) => meetingsOf(edge, other)),
  );
}

/** The edges of what is free: around balls, holes and ends of cushion pieces, and along these. */
function edgesOf(others: Position, shape: TableShape, kit: Kit): Edge[] {
  const reachM = touchingM(kit);
  const round = (xM: number, yM: number, radiusM: number): Edge => ({
    kind: 'round',
    xM,
    yM,
    radiusM,
  });
  return [
    ...others.map(({ xM, yM }) => round(xM, yM, 2 * kit.ballRadiusM)),
    ...shape.pockets.map(({ drop, dropRadiusM }) =>
      round(drop.x, drop.y, dropRadiusM + TOUCHING_M),
    ),
    ...shape.cushions.flatMap(({ core, roundingM }) =>
      core.flatMap((piece) => [
        round(piece.fromX, piece.fromY, reachM + roundingM),
        beside(piece, reachM + roundingM),
      ]),
    ),
  ];
}

/** The line so far on the bed's side of a piece: the bed is on the left of its way. */
function beside({ fromX, fromY, alongX, alongY }: CorePiece, byM: number): Edge {
  const [nx, ny] = [-alongY, alongX];
  return { kind: 'straight', nx, ny, offM: fromX * nx + fromY * ny + byM };
}
