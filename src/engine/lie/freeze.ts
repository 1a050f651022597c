import type { Kit } from '../kit/kit';
import type { TableShape } from '../table/table-shape';
import { ballNamed, without } from './balls-of';
import { nearestCushion, touchingM } from './clearances';
import { isLegal, type Place } from './legal-place';
import type { BallName, NamedBall, Position } from './position';

/**
 * Where a ball just touches the nearest other ball or cushion, by the shortest way there. Where
 * something else is in that place it is the next nearest; null where nothing can be touched.
 */
export function frozen(
  position: Position,
  name: BallName,
  shape: TableShape,
  kit: Kit,
): Place | null {
  const ball = ballNamed(position, name);
  if (ball === null) return null;
  const others = without(position, name);
  const moves = [
    ...others.map((other) => againstBall(ball, other, kit)),
    againstCushion(ball, shape, kit),
  ];
  const legal = moves
    .sort((a, b) => Math.abs(a.byM) - Math.abs(b.byM))
    .map(({ byM, nx, ny }) => ({ xM: ball.xM + byM * nx, yM: ball.yM + byM * ny }))
    .find((place) => isLegal(place, others, shape, kit));
  return legal ?? null;
}

/** A unit vector, and how far to go along it to touch, m. */
interface Move {
  readonly nx: number;
  readonly ny: number;
  readonly byM: number;
}

function againstBall(ball: NamedBall, other: NamedBall, { ballRadiusM }: Kit): Move {
  const [dx, dy] = [other.xM - ball.xM, other.yM - ball.yM];
  const apartM = Math.hypot(dx, dy);
  // Where both lie in one place any way out will do.
  const [nx, ny] = apartM > 0 ? [dx / apartM, dy / apartM] : [0, 1];
  return { nx, ny, byM: apartM - 2 * ballRadiusM };
}

function againstCushion({ xM, yM }: NamedBall, shape: TableShape, kit: Kit): Move {
  const { awayM, nx, ny } = nearestCushion(shape, xM, yM);
  return { nx, ny, byM: awayM - touchingM(kit) };
}
