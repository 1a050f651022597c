import type { Kit } from '../kit/kit';
import { RAD_PER_DEG } from '../numerics/angle';
import type { Point } from '../table/point';
import type { TableShape } from '../table/table-shape';
import { placeOf } from './balls-of';
import type { LeastElevation, Position } from './position';

/** As level as a cue is held with nothing in its way, rad (common practice, no source). */
export const LEVEL_RAD = 3 * RAD_PER_DEG;
/** Steeper than this nobody reaches over anything: a massé's elevation, and the engine's own end. */
const STEEPEST_RAD = 75 * RAD_PER_DEG;
/** Half a shaft's thickness at its tip and how much that grows each metre (our estimate), m. */
const SHAFT_M = 0.0065;
const SHAFT_M_PER_M = 0.0055;
/** From tip to butt, m (common practice, no source). */
const CUE_LENGTH_M = 1.47;
/** Air to leave between shaft and what it is over, m (our estimate). */
const AIR_M = 0.002;
/** How far behind a nose the wood of the rail begins, and how high it is over the bed, m (ours). */
const RUBBER_M = 0.05;
const RAIL_TOP_M = 0.041;

/** Where the tip touches, as in a shot: fractions of R, right + and up +. */
export interface TipContact {
  readonly side: number;
  readonly height: number;
}

const MIDDLE: TipContact = { side: 0, height: 0 };

/**
 * The least elevation at which the cue clears the rail and the balls behind the cue ball. The stick
 * is a straight taper whose axis passes (R + tip radius)·height above the ball's centre, so what
 * is struck low has to be raised more.
 *
 * @param headingRad the way the cue points, over the table
 */
export function leastElevation(
  cueBall: Point,
  headingRad: number,
  others: Position,
  shape: TableShape,
  kit: Kit,
  contact: TipContact = MIDDLE,
): LeastElevation {
  const needs: LeastElevation[] = [
    { elevationRad: LEVEL_RAD, over: 'nothing' },
    ...overRail(cueBall, headingRad, shape, kit, contact),
    ...others.map((ball) => ({
      elevationRad: overBall(cueBall, headingRad, placeOf(ball), kit, contact),
      over: ball.name,
    })),
  ];
  const most = needs.reduce((a, b) => (b.elevationRad > a.elevationRad ? b : a));
  return { ...most, elevationRad: Math.min(STEEPEST_RAD, most.elevationRad) };
}

/** How thick half the shaft is so far behind the tip, m. */
function shaftAt(behindM: number): number {
  return SHAFT_M + SHAFT_M_PER_M * behindM;
}

/** Of the stick's axis off the ball's centre, m. */
function axisOff(contact: number, { ballRadiusM, tipRadiusM }: Kit): number {
  return contact * (ballRadiusM + tipRadiusM);
}

/** The nose, and the edge of the wood behind it. */
function overRail(
  cueBall: Point,
  headingRad: number,
  shape: TableShape,
  kit: Kit,
  { height }: TipContact,
): LeastElevation[] {
  const edges: readonly (readonly [number, number])[] = [
    [0, kit.cushion.noseHeight * kit.ballRadiusM],
    [RUBBER_M, RAIL_TOP_M],
  ];
  return edges.map(([behindNoseM, topM]) => {
    const behindM = toRail(cueBall, headingRad, shape, behindNoseM);
    const riseM = topM + AIR_M - kit.ballRadiusM;
    return { over: 'cushion', elevationRad: clearing(behindM, riseM, axisOff(height, kit)) };
  });
}

/**
 * The elevation θ at which the shaft's underside is so high above the ball's centre so far behind
 * it: s sin θ + a = ρ + rise cos θ, a being the axis off the centre and ρ half the shaft.
 */
function clearing(behindM: number, riseM: number, axisM: number): number {
  if (behindM > CUE_LENGTH_M) return 0;
  const share = (shaftAt(behindM) - axisM) / Math.hypot(behindM, riseM);
  if (share >= 1) return STEEPEST_RAD;
  return Math.atan2(riseM, behindM) + Math.asin(Math.max(-1, share));
}

/** Straight back from the cue ball to the nose of a cushion, or to a line so far behind it, m. */
function toRail(
  { x, y }: Point,
  headingRad: number,
  { widthM, lengthM }: TableShape,
  behindNoseM: number,
): number {
  const [backX, backY] = [-Math.sin(headingRad), -Math.cos(headingRad)];
  const toX = (Math.sign(backX) * (widthM / 2 + behindNoseM) - x) / backX;
  const toY = (Math.sign(backY) * (lengthM / 2 + behindNoseM) - y) / backY;
  return Math.min(
    backX === 0 ? Number.POSITIVE_INFINITY : toX,
    backY === 0 ? Number.POSITIVE_INFINITY : toY,
  );
}

/** The elevation at which the shaft passes a ball behind the cue ball; 0 where it does anyway. */
function overBall(
  cueBall: Point,
  headingRad: number,
  ball: Point,
  kit: Kit,
  { side, height }: TipContact,
): number {
  const [sin, cos] = [Math.sin(headingRad), Math.cos(headingRad)];
  const [dx, dy] = [ball.x - cueBall.x, ball.y - cueBall.y];
  const behindM = -(dx * sin + dy * cos);
  if (behindM <= 0 || behindM > CUE_LENGTH_M) return 0;
  const asideM = dx * cos - dy * sin - axisOff(side, kit);
  const apartM = kit.ballRadiusM + shaftAt(behindM) + AIR_M;
  if (Math.abs(asideM) >= apartM) return 0;
  const aboveM = Math.sqrt(apartM * apartM - asideM * asideM);
  const share = (aboveM - axisOff(height, kit)) / behindM;
  return share >= 1 ? STEEPEST_RAD : Math.asin(Math.max(0, share));
}
