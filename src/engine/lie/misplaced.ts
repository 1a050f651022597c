import type { Kit } from '../kit/kit';
import { isOnBed } from '../table/check-table';
import type { TableShape } from '../table/table-shape';
import { TOUCHING_M } from './clearances';
import type { Misplaced, NamedBall, Position } from './position';

/** A ball that lies in another, or not free on the bed; null where all lie well. */
export function findMisplaced(position: Position, shape: TableShape, kit: Kit): Misplaced | null {
  const off = position.find((ball) => !isOnBed(ball, kit, shape));
  if (off !== undefined) return { reason: 'off-bed', ball: off.name };
  const leastM = 2 * kit.ballRadiusM - TOUCHING_M;
  const inside = position.find((ball, index) =>
    position.some((other, at) => at < index && apartM(ball, other) < leastM),
  );
  return inside === undefined ? null : { reason: 'overlap', ball: inside.name };
}

function apartM(a: NamedBall, b: NamedBall): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM);
}
