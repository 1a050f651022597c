import { INPUT_RANGES, THINNEST_CUT_RAD } from '../direct/input-ranges';
import type { Kit } from '../kit/kit';
import { ballNamed, placeOf, without } from '../lie/balls-of';
import { bridgeRoom } from '../lie/bridge-room';
import { leastElevation } from '../lie/least-elevation';
import { findMisplaced } from '../lie/misplaced';
import type { BallName, NamedBall, Position } from '../lie/position';
import { bearing, wrapped } from '../numerics/angle';
import type { PocketShape } from '../table/pocket-shape';
import type { Point } from '../table/point';
import type { TableShape } from '../table/table-shape';
import { fallingWay } from './falling-way';
import type { Pot } from './goal';
import { onStraightWay, type StraightWay, wayToMouth } from './in-the-way';
import type { OpenAtSpeed, OpenWay } from './open-way';
import type { Opening } from './opening';
import type { NoShot, PositionShot } from './position-shot';

/** Finds what of a pocket is open to a ball that lies at a place; null: nothing. */
export type FindWay = typeof fallingWay;

/**
 * The shot that a position asks for: all of it but the stroke.
 *
 * Its target is the mouth as the ball sees it, told where the bed drops away: it holds just the
 * directions that are open. A cue ball that all but lies where it should meet the ball is taken for
 * a straight one from as near as the engine goes.
 *
 * @param findWay finds what of the pocket is open; by default by playing balls at it, milliseconds
 */
export function shotFrom(
  position: Position,
  goal: Pot,
  shape: TableShape,
  kit: Kit,
  findWay: FindWay = fallingWay,
): PositionShot | NoShot {
  const [cueBall, ball] = [ballNamed(position, 'cue'), ballNamed(position, goal.ball)];
  if (cueBall === null) return noShot('no-cue-ball');
  if (ball === null) return noShot('no-such-ball', goal.ball);
  const misplaced = findMisplaced(position, shape, kit);
  if (misplaced !== null) return noShot(misplaced.reason, misplaced.ball);
  const pocket = shape.pockets.find(({ name }) => name === goal.pocket);
  const open = pocket === undefined ? null : findWay(placeOf(ball), pocket, shape, kit);
  if (pocket === undefined || open === null) {
    return noShot('pocket-closed');
  }
  const line = lineTo(placeOf(cueBall), ghostOf(ball, open, kit), open.alongRad);
  if (Math.abs(line.cutRad) > THINNEST_CUT_RAD) {
    return noShot('too-thin');
  }
  const others = without(position, 'cue', goal.ball);
  const blocks = waysOf(cueBall, ball, line.ghost, open, pocket).flatMap((way) =>
    onStraightWay(way, others, shape, kit),
  );
  return {
    ok: true,
    distanceM: line.distanceM,
    cutRad: line.cutRad,
    headingRad: line.headingRad,
    ghost: { xM: line.ghost.x, yM: line.ghost.y },
    target: mouthOf(open, kit),
    inTheWay: blocks,
    ...behind(position, cueBall, line.headingRad, shape, kit),
  };
}

function noShot(reason: NoShot['reason'], ball?: BallName): NoShot {
  return ball === undefined ? { ok: false, reason } : { ok: false, reason, ball };
}

/** A ball's width behind the object ball, seen along the target line. */
function ghostOf({ xM, yM }: NamedBall, { alongRad }: OpenWay, { ballRadiusM }: Kit): Point {
  const widthM = 2 * ballRadiusM;
  return { x: xM - widthM * Math.sin(alongRad), y: yM - widthM * Math.cos(alongRad) };
}

interface StraightLine {
  readonly distanceM: number;
  readonly headingRad: number;
  readonly cutRad: number;
  readonly ghost: Point;
}

function lineTo(cueBall: Point, ghost: Point, targetRad: number): StraightLine {
  const leastM = INPUT_RANGES.distanceM.min;
  const [dx, dy] = [ghost.x - cueBall.x, ghost.y - cueBall.y];
  const distanceM = Math.hypot(dx, dy);
  if (distanceM < leastM) return { distanceM: leastM, headingRad: targetRad, cutRad: 0, ghost };
  const headingRad = bearing(dx, dy);
  return { distanceM, headingRad, cutRad: wrapped(targetRad - headingRad), ghost };
}

/** The cue ball's way to the ghost ball, and the object ball's to the mouth. */
function waysOf(
  cueBall: NamedBall,
  ball: NamedBall,
  ghost: Point,
  { alongRad }: OpenWay,
  pocket: PocketShape,
): readonly StraightWay[] {
  return [
    { mover: 'cue', from: placeOf(cueBall), to: ghost },
    wayToMouth(placeOf(ball), alongRad, pocket),
  ];
}

function mouthOf({ distanceM, halfAngleRad, openings }: OpenWay, { ballRadiusM }: Kit) {
  const halfM = distanceM * Math.tan(halfAngleRad) + ballRadiusM;
  const mouth = { kind: 'mouth' as const, distanceM, mouthM: 2 * halfM };
  if (openings === undefined) return mouth;
  return { ...mouth, openings: openings.map((open) => openingOf(open, distanceM)) };
}

function openingOf({ speedMps, middleRad, halfAngleRad }: OpenAtSpeed, distanceM: number): Opening {
  const lowM = distanceM * Math.tan(middleRad - halfAngleRad);
  const highM = distanceM * Math.tan(middleRad + halfAngleRad);
  return { speedMps, midM: (lowM + highM) / 2, halfM: (highM - lowM) / 2 };
}

/** What the cue and the hand find behind the cue ball. */
function behind(
  position: Position,
  cueBall: NamedBall,
  headingRad: number,
  shape: TableShape,
  kit: Kit,
): Pick<PositionShot, 'least' | 'bridge'> {
  const others = without(position, 'cue');
  const at = placeOf(cueBall);
  const least = leastElevation(at, headingRad, others, shape, kit);
  return { least, bridge: bridgeRoom(at, headingRad, others, least, shape, kit) };
}
