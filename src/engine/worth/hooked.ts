import type { Kit } from '../kit/kit';
import { ballNamed } from '../lie/balls-of';
import type { NamedBall, Position } from '../lie/position';

/** So many ways across a ball are tried, from edge to edge. */
const ACROSS = 9;
/** Not quite the edge. */
const EDGE = 0.98;

/**
 * Whether the cue ball can be sent straight at no ball that may be hit first: whatever it meets, another
 * ball is met before.
 */
export function isHooked(position: Position, first: readonly number[], kit: Kit): boolean {
  const cueBall = ballNamed(position, 'cue');
  if (cueBall === null) return false;
  const others = position.filter((ball) => ball !== cueBall);
  return !others.some(
    (ball) =>
      ball.name !== 'cue' &&
      first.includes(ball.name) &&
      isInSight(cueBall, ball, others, 2 * kit.ballRadiusM),
  );
}

function isInSight(
  cueBall: NamedBall,
  ball: NamedBall,
  others: readonly NamedBall[],
  widthM: number,
): boolean {
  const [dx, dy] = [ball.xM - cueBall.xM, ball.yM - cueBall.yM];
  const apartM = Math.hypot(dx, dy);
  for (let at = 0; at < ACROSS; at++) {
    const share = (EDGE * (2 * at - ACROSS + 1)) / (ACROSS - 1);
    const turnRad = Math.asin(Math.min(1, (share * widthM) / apartM));
    const [sin, cos] = [Math.sin(turnRad), Math.cos(turnRad)];
    const wayX = (dx * cos + dy * sin) / apartM;
    const wayY = (dy * cos - dx * sin) / apartM;
    const reachM = meetsAt(cueBall, ball, wayX, wayY, widthM);
    const isBlocked = others.some(
      (other) => other !== ball && meetsAt(cueBall, other, wayX, wayY, widthM) < reachM,
    );
    if (!isBlocked) return true;
  }
  return false;
}

/** How far along a straight way the cue ball meets a ball, m; infinite: never. */
function meetsAt(
  from: NamedBall,
  { xM, yM }: NamedBall,
  wayX: number,
  wayY: number,
  widthM: number,
): number {
  const [dx, dy] = [xM - from.xM, yM - from.yM];
  const alongM = dx * wayX + dy * wayY;
  const asideM = dx * wayY - dy * wayX;
  if (alongM <= 0 || Math.abs(asideM) >= widthM) return Number.POSITIVE_INFINITY;
  return alongM - Math.sqrt(widthM * widthM - asideM * asideM);
}
