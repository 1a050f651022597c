import { THINNEST_CUT_RAD } from '../direct/input-ranges';
import { openBetween, type PointsBeside } from '../goal/open-way';
import type { Kit } from '../kit/kit';
import { touchingM } from '../lie/clearances';
import type { NamedBall } from '../lie/position';
import { bearing, wrapped } from '../numerics/angle';
import type { PocketShape } from '../table/pocket-shape';
import type { TableShape } from '../table/table-shape';

/** A table, and what a ball on it is to a straight line. */
export interface Bed {
  readonly shape: TableShape;
  readonly kit: Kit;
}

/** A pocket with the points of its cushions. */
export interface PocketMouth {
  readonly pocket: PocketShape;
  readonly points: PointsBeside;
}

/** The straight lines by which a ball is cut into a pocket, nothing else being on the table. */
export interface PotLine {
  /** The cue ball's direction over the table, rad. */
  readonly headingRad: number;
  /** Where the ball is to go over the table, and how far that is from the cue ball's, right +, rad. */
  readonly alongRad: number;
  readonly cutRad: number;
  /** Cue-ball centre to ghost-ball centre, and the object ball's to where the bed drops away, m. */
  readonly distanceM: number;
  readonly runM: number;
  /** How far left and right of its line the ball may go and fall without a touch, rad. */
  readonly leftRad: number;
  readonly rightRad: number;
  /** How far off the pocket's axis the ball comes, rad; no sign. */
  readonly askewRad: number;
  /** Whether the ball lies at the rail along which it goes. */
  readonly isRailed: boolean;
}

/** A ball so near to where it touches a cushion is as good as frozen to it, m. */
const FROZEN_M = 0.003;
const LEAST_DISTANCE_M = 0.002;

/**
 * The lines of a cut; null where the pocket is closed to the ball, the cut is too thin or the cue ball
 * cannot be where it should meet the ball. Of a ball at a rail the line is turned off the rail as far as the
 * cue ball behind it needs.
 */
export function potLine(
  cueBall: NamedBall,
  ball: NamedBall,
  { pocket, points }: PocketMouth,
  { shape, kit }: Bed,
): PotLine | null {
  const open = openBetween({ x: ball.xM, y: ball.yM }, pocket, points, touchingM(kit));
  if (open === null) return null;
  const { halfAngleRad } = open;
  const turnRad = turnOffRail(ball, open.alongRad, { shape, kit });
  if (Math.abs(turnRad) > halfAngleRad + MOST_TURN_RAD) return null;
  const alongRad = open.alongRad + turnRad;
  const widthM = 2 * kit.ballRadiusM;
  const wayX = ball.xM - widthM * Math.sin(alongRad) - cueBall.xM;
  const wayY = ball.yM - widthM * Math.cos(alongRad) - cueBall.yM;
  const distanceM = Math.max(LEAST_DISTANCE_M, Math.hypot(wayX, wayY));
  const headingRad = distanceM > LEAST_DISTANCE_M ? bearing(wayX, wayY) : alongRad;
  const cutRad = wrapped(alongRad - headingRad);
  if (Math.abs(cutRad) > THINNEST_CUT_RAD) return null;
  return {
    headingRad,
    alongRad,
    cutRad,
    distanceM,
    runM: open.distanceM,
    leftRad: Math.max(0, halfAngleRad + turnRad),
    rightRad: Math.max(0, halfAngleRad - turnRad),
    askewRad: Math.abs(wrapped(open.alongRad - bearing(pocket.axis.x, pocket.axis.y))),
    isRailed: turnRad !== 0,
  };
}

/** A ball at a rail is played along it; turned farther it would not fall, rad. */
const MOST_TURN_RAD = 0.02;

/** How far a line must be turned, right +, for the cue ball behind the ball not to be in a cushion, rad. */
function turnOffRail({ xM, yM }: NamedBall, alongRad: number, { shape, kit }: Bed): number {
  const widthM = 2 * kit.ballRadiusM;
  const reachM = touchingM(kit);
  const [sin, cos] = [Math.sin(alongRad), Math.cos(alongRad)];
  const [ghostX, ghostY] = [xM - widthM * sin, yM - widthM * cos];
  const overX = Math.abs(ghostX) + reachM - shape.widthM / 2;
  const overY = Math.abs(ghostY) + reachM - shape.lengthM / 2;
  if (overX <= 0 && overY <= 0) return 0;
  if (isInMouth(ghostX, ghostY, shape, kit)) return 0;
  // Turned right, the ghost ball moves by cos along −x and by sin along y.
  if (overX > overY)
    return (
      (Math.sign(ghostX) * overX) / (widthM * Math.sign(cos) * Math.max(SQUARE, Math.abs(cos)))
    );
  return (-Math.sign(ghostY) * overY) / (widthM * Math.sign(sin) * Math.max(SQUARE, Math.abs(sin)));
}

/** A line so square to the rail is not turned off it. */
const SQUARE = 1e-3;

/** Between the points of a pocket there is no nose. */
function isInMouth(x: number, y: number, { pockets }: TableShape, { ballRadiusM }: Kit): boolean {
  return pockets.some(
    ({ mouth, mouthM }) => Math.hypot(x - mouth.x, y - mouth.y) < mouthM / 2 - ballRadiusM,
  );
}

/** A cut this thick sends the ball along the way the cue ball came, rad. */
const ALONG_RAD = 0.2;

/** Whether both balls are frozen to the rail along which the ball is sent: then a hair decides. */
export function areAlongRail(
  cueBall: NamedBall,
  ball: NamedBall,
  { cutRad }: PotLine,
  { shape, kit }: Bed,
): boolean {
  const reachM = touchingM(kit) + FROZEN_M;
  const isAt = (a: number, b: number, half: number) =>
    Math.abs(a) > half - reachM && Math.abs(b) > half - reachM && a > 0 === b > 0;
  return (
    Math.abs(cutRad) < ALONG_RAD &&
    (isAt(cueBall.xM, ball.xM, shape.widthM / 2) || isAt(cueBall.yM, ball.yM, shape.lengthM / 2))
  );
}
