import type { Signal } from '@preact/signals';
import type { Canvas, Point } from '../../diagram/canvas';
import type { NearBall } from '../../diagram/near-ball';
import type { OverheadView } from '../../diagram/overhead-view';
import { cutOfGhost, draggedContact } from '../../diagram/picture-drags';
import { layOutRun, MOST_LENGTHS } from '../../diagram/run-scale';
import type { ShooterView } from '../../diagram/shooter-view';
import { CUT_UNITS, cutSizeInRad, cutSizeInUnit } from '../../units/cut-unit';
import { distanceInUnit } from '../../units/distance-unit';
import { lengthsRun } from '../../units/table-run';
import type { Models } from '../app-models';
import { faceMarks } from './face-marks';
import type { Finger } from './finger';
import { bedOf } from './run-bed';
import type { InputName } from './tile-words';
import type { Move } from './use-drag';

/** The same move, which says where the finger is. */
function followed(move: Move, sets: InputName, finger: Signal<Finger | null>): Move {
  return (at) => {
    move(at);
    finger.value = { sets, at };
  };
}

/** Half of the room in which a finger takes hold of something small, px. */
const REACH_PX = 24;

/** What of the drawing from behind the cue is dragged from there: the tip, or the ghost ball. */
export function shooterGrip(
  app: Models<'shot' | 'kit' | 'desk'>,
  view: ShooterView,
  at: Point,
  finger: Signal<Finger | null>,
): Move | null {
  const { near, ghostBall, ghostGrip } = view;
  if (near && isWithin(at, near.ball.cx, near.ball.cy, near.ball.r)) {
    return followed(tipMove(app, near, at), 'tip', finger);
  }
  const isOnGhost =
    at.y < view.ruler.y + REACH_PX / 2 &&
    (isWithin(at, ghostBall.cx, ghostBall.cy, ghostBall.r) ||
      isWithin(at, ghostGrip.x, ghostGrip.y, REACH_PX));
  return isOnGhost ? followed(cutMove(app, view.pxPerM, at), 'cut', finger) : null;
}

function isWithin(at: Point, x: number, y: number, reachPx: number): boolean {
  return Math.hypot(at.x - x, at.y - y) <= Math.max(reachPx, REACH_PX);
}

function tipMove({ shot }: Models<'shot'>, { ball, tip }: NearBall, from: Point): Move {
  const start = shot.shot.peek();
  const marks = faceMarks(shot);
  const out = start.side === 0 ? 0 : (tip.cx - ball.cx) / start.side;
  const up = start.height === 0 ? 0 : (ball.cy - tip.cy) / start.height;
  const radiusPx = Math.max(out, up, ball.r);
  return (at) => {
    const { x, y } = { x: at.x - from.x, y: at.y - from.y };
    const { side, height } = draggedContact(start, x, y, radiusPx, marks);
    shot.setTip(side, height);
  };
}

/** By whole steps of the unit in which cuts are shown. */
function cutMove(
  { shot, kit, desk }: Models<'shot' | 'kit' | 'desk'>,
  pxPerM: number,
  from: Point,
): Move {
  const { ballRadiusM } = kit.kit.peek();
  const { cutUnit } = desk.preferences.peek();
  const startM = -2 * ballRadiusM * Math.sin(shot.shot.peek().cutRad);
  return (at) => {
    const cutRad = cutOfGhost(startM + (at.x - from.x) / pxPerM, ballRadiusM);
    const { fineStep } = CUT_UNITS[cutUnit];
    const size = cutSizeInRad(onStep(cutSizeInUnit(cutRad, cutUnit), fineStep), cutUnit);
    if (size.ok) shot.setCut(cutRad < 0 ? -size.value : size.value);
  };
}

/** What of the strip from above is dragged from there: the cue ball, or its run. */
export function stripGrip(
  app: Models<'shot' | 'kit' | 'desk'>,
  { cueBall, runTopY, pxPerM }: OverheadView,
  canvas: Canvas,
  at: Point,
  finger: Signal<Finger | null>,
): Move | null {
  const toBall = Math.hypot(at.x - cueBall.cx, at.y - cueBall.cy);
  const run = runTopY === null ? null : layOutRun(runOf(app), runTopY, canvas);
  const toRun = run ? Math.hypot(at.x - run.atX, at.y - run.y) : Number.POSITIVE_INFINITY;
  if (Math.min(toBall, toRun) > REACH_PX) return null;
  return run && toRun < toBall
    ? followed(speedMove(app, run.pxPerLength, at), 'speed', finger)
    : followed(distanceMove(app, pxPerM, at), 'distance', finger);
}

/** Where the scale's handle stands, whatever else is marked on it. */
function runOf({ shot, kit }: Models<'shot' | 'kit'>) {
  const runLengths = lengthsRun(shot.shot.peek().speedMps, bedOf(kit));
  return { runLengths, reachLengths: null };
}

function distanceMove(
  { shot, kit, desk }: Models<'shot' | 'kit' | 'desk'>,
  pxPerM: number,
  from: Point,
): Move {
  const { figure, facts, range } = shot.fields.distance.peek();
  const { distanceUnit } = desk.preferences.peek();
  const tableLengthM = kit.current.tables.peek().lengthM;
  return (at) => {
    const nearerM = (at.x - from.x) / pxPerM;
    const moved = figure - distanceInUnit(nearerM, distanceUnit, tableLengthM);
    shot.setFigure('distance', Math.max(range.min, onStep(moved, facts.fineStep)));
  };
}

/**
 * By steps of the unit in which speeds are shown, to the one that rolls as far as the handle stands.
 * What a speed rolls is worked out once a drag: each cushion on the way costs as much as a contact.
 */
function speedMove({ shot, kit }: Models<'shot' | 'kit'>, pxPerLength: number, from: Point): Move {
  const bed = bedOf(kit);
  const { unit, inUnit, inMps, facts } = shot.speedScale.peek();
  const known = new Map<number, number>();
  const figureAt = (steps: number) => onStep(steps * facts.fineStep, facts.fineStep);
  const lengthsAt = (steps: number): number => {
    if (unit === 'lengths') return figureAt(steps);
    const lengths = known.get(steps) ?? lengthsRun(inMps(figureAt(steps)), bed);
    known.set(steps, lengths);
    return lengths;
  };
  const { speedMps } = shot.shot.peek();
  const start = lengthsRun(speedMps, bed);
  let steps = Math.max(1, Math.round(inUnit(speedMps) / facts.fineStep));
  return (at) => {
    const meant = Math.min(MOST_LENGTHS, start + (at.x - from.x) / pxPerLength);
    const offBy = (count: number) => Math.abs(lengthsAt(count) - meant);
    while (lengthsAt(steps) < meant && offBy(steps + 1) < offBy(steps)) steps += 1;
    while (steps > 1 && lengthsAt(steps) > meant && offBy(steps - 1) < offBy(steps)) steps -= 1;
    shot.setFigure('speed', figureAt(steps));
  };
}

/** The nearest multiple of a step, without what binary fractions leave. */
function onStep(figure: number, step: number): number {
  return Number((Math.round(figure / step) * step).toPrecision(12));
}
