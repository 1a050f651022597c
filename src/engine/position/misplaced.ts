import type { Cushion } from '../model/cushion';
import type { Kit } from '../model/kit';
import { isOnBed } from '../table/check-table';
import type { TableShape } from '../table/table-shape';
import { TOUCHING_M } from './clearances';
import type { NamedBall, NoShot, Position } from './position';

export function noShot(reason: NoShot['reason'], message: string): NoShot {
  return { ok: false, reason, message };
}

/** A ball that lies in another, or not free on the bed; null where all lie well. */
export function findMisplaced(
  position: Position,
  shape: TableShape,
  kit: Kit,
  cushion: Cushion,
): NoShot | null {
  const off = position.find((ball) => !isOnBed(ball, kit, shape, cushion));
  if (off !== undefined) return noShot('off-bed', `${called(off)} does not lie free on the bed.`);
  const leastM = 2 * kit.ballRadiusM - TOUCHING_M;
  const inside = position.find((ball, index) =>
    position.some((other, at) => at < index && apartM(ball, other) < leastM),
  );
  if (inside === undefined) return null;
  return noShot('overlap', `${called(inside)} lies in the place of another.`);
}

function called({ name }: NamedBall): string {
  return name === 'cue' ? 'The cue ball' : `Ball ${name}`;
}

function apartM(a: NamedBall, b: NamedBall): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM);
}
