import type { Kit } from '../kit/kit';
import type { NamedBall, Position } from '../lie/position';
import { bearing, wrapped } from '../numerics/angle';
import type { PotLine } from './pot-line';

/** How other balls narrow the lines of a cut. */
export interface Between {
  /** Left and right of the target line, how far the ball may go before it meets one, rad. */
  readonly leftRad: number;
  readonly rightRad: number;
  /** By how little the cue ball clears one on its way, m; below 0: it does not. */
  readonly clearM: number;
}

/** Farther off than this, m, a ball is in nobody's way. */
const CLEAR_M = 1;

/** What of other balls lies beside the lines of a cut; null where one stands on the ball's own line. */
export function between(
  cueBall: NamedBall,
  ball: NamedBall,
  position: Position,
  line: PotLine,
  kit: Kit,
): Between | null {
  const widthM = 2 * kit.ballRadiusM;
  let [leftRad, rightRad, clearM] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, CLEAR_M];
  for (const other of position) {
    if (other.name === cueBall.name || other.name === ball.name) continue;
    const shadow = shadowOn(ball, other, line, widthM);
    if (shadow !== null) {
      const { offRad, halfRad } = shadow;
      if (Math.abs(offRad) < halfRad) return null;
      if (offRad > 0) rightRad = Math.min(rightRad, offRad - halfRad);
      else leftRad = Math.min(leftRad, -offRad - halfRad);
    }
    clearM = Math.min(clearM, gapBeside(cueBall, other, line) - widthM);
  }
  return { leftRad, rightRad, clearM };
}

/** Where a ball stands as the object ball sees it, and the half of what it covers; null: nowhere near. */
function shadowOn(ball: NamedBall, other: NamedBall, { alongRad, runM }: PotLine, widthM: number) {
  const [dx, dy] = [other.xM - ball.xM, other.yM - ball.yM];
  const apartM = Math.hypot(dx, dy);
  if (apartM > runM + widthM) return null;
  const offRad = wrapped(bearing(dx, dy) - alongRad);
  const asideM = apartM * Math.sin(offRad);
  const alongM = apartM * Math.cos(offRad);
  const meetsM = alongM - Math.sqrt(Math.max(0, widthM * widthM - asideM * asideM));
  if (alongM <= 0 || meetsM > runM) return null;
  return { offRad, halfRad: Math.asin(Math.min(1, widthM / apartM)) };
}

/** From a ball's centre to the cue ball's way, m. */
function gapBeside(
  { xM, yM }: NamedBall,
  other: NamedBall,
  { headingRad, distanceM }: PotLine,
): number {
  const [sin, cos] = [Math.sin(headingRad), Math.cos(headingRad)];
  const [dx, dy] = [other.xM - xM, other.yM - yM];
  const alongM = Math.min(distanceM, dx * sin + dy * cos);
  if (alongM <= 0) return Number.POSITIVE_INFINITY;
  return Math.hypot(dx - alongM * sin, dy - alongM * cos);
}
