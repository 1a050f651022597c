import type { Kit } from '../kit/kit';
import type { TableShape } from '../table/table-shape';
import { ballNamed, without } from './balls-of';
import { nearestCushion, touchingM } from './clearances';
import type { BallName, Position } from './position';

/** Something a ball lies beside. */
export interface Neighbour {
  readonly what: BallName | 'cushion';
  /** From surface to surface, m. */
  readonly gapM: number;
  /** Whether that is none: they touch. */
  readonly isFrozen: boolean;
}

/** A gap below this, m, is none that a player could see or lay (our choice). */
export const FROZEN_M = 5e-5;

/** The other balls and the nearest cushion, the nearest first. */
export function neighboursOf(
  position: Position,
  name: BallName,
  shape: TableShape,
  kit: Kit,
): readonly Neighbour[] {
  const ball = ballNamed(position, name);
  if (ball === null) return [];
  const { awayM } = nearestCushion(shape, ball.xM, ball.yM);
  const balls = without(position, name).map((other) => {
    const apartM = Math.hypot(other.xM - ball.xM, other.yM - ball.yM);
    return neighbour(other.name, apartM - 2 * kit.ballRadiusM);
  });
  const rail = neighbour('cushion', awayM - touchingM(kit));
  return [...balls, rail].sort((a, b) => a.gapM - b.gapM);
}

function neighbour(what: Neighbour['what'], gapM: number): Neighbour {
  return { what, gapM, isFrozen: gapM < FROZEN_M };
}

/** Every two balls that touch. */
export function frozenPairs(
  position: Position,
  { ballRadiusM }: Kit,
): readonly (readonly [BallName, BallName])[] {
  const frozenM = 2 * ballRadiusM + FROZEN_M;
  return position.flatMap((one, index) =>
    position
      .slice(index + 1)
      .filter((other) => Math.hypot(other.xM - one.xM, other.yM - one.yM) < frozenM)
      .map((other) => [one.name, other.name] as const),
  );
}
