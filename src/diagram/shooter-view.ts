import { aimOffsetM } from './aim-offset';
import { layOutRuler, type Ruler } from './ball-ruler';
import type { Canvas, Circle, Label, Point } from './canvas';
import { BAND_LETTERS, boxOf, placeBandNames } from './name-boxes';
import { layOutNearBall, type NearBall, type TipOnBall } from './near-ball';
import { type Frame, frameOf } from './shooter-frame';
import type { ShooterScene } from './shooter-scene';
import {
  type Mark,
  namesOf,
  type PlacedName,
  placeBallNames,
  placeMarks,
  placeScaleNote,
} from './view-labels';

/** An upright band of the view, px. */
export interface Band {
  readonly fromX: number;
  readonly toX: number;
}

/** The two lines of a shot set aside, each from the near ball to its mark. */
export interface HeldLines {
  readonly aimX: number;
  readonly stickX: number;
  readonly near: NearBall | null;
}

export interface ShooterView {
  readonly objectBall: Circle;
  readonly ghostBall: Circle;
  /** Null where a mark or the edge leaves the name no room. */
  readonly objectLabel: Label | null;
  readonly ghostLabel: Label | null;
  readonly aim: Mark | null;
  /** The aims that still go, cut off at the edges of the view. */
  readonly band: Band | null;
  /** How sure the aim is, cut off likewise. */
  readonly haze: Band | null;
  /** Where the two bands are named, the crisp one first; empty where there is no room. */
  readonly bandLabels: readonly Label[];
  /** What names are written, and where: a finger on one means the part. */
  readonly names: readonly PlacedName[];
  /** Where the stick's axis passes; null while there is no answer. */
  readonly stick: Mark | null;
  readonly ruler: Ruler;
  /** Where the marks begin, at the top. */
  readonly topY: number;
  /** The cue ball in front; null where the height has no room for it. */
  readonly near: NearBall | null;
  readonly held: HeldLines | null;
  /** Where the ghost ball is taken hold of: on its rim, away from the object ball. */
  readonly ghostGrip: Point;
  /** Pixels that the ghost ball moves for each m that it is moved beside the object ball. */
  readonly pxPerM: number;
  /** How many ball widths the view spans. */
  readonly ballsAcross: number;
  /** Where to tell that; null while the view spans no more than it mostly does. */
  readonly scaleNote: Label | null;
}

/**
 * Lays out what lies before the shooter. Above: object ball and ghost ball in a central projection
 * from the cue ball's centre onto the plane through the object ball's centre, square to the straight
 * line. Every line through the cue ball's centre is upright in it, so one mark reads true against
 * both balls. Within about 0.2 m the ghost ball is drawn smaller than so seen, and the mark is true
 * to the leading ball only. The object ball stays in the middle, whatever is moved.
 *
 * Below: the cue ball in front, straight under the ghost ball and on the scale of the marks, so that
 * aim line and cue, which are parallel on the table, are so in the drawing for a tip at mid-height.
 */
export function layOutShooterView(scene: ShooterScene, canvas: Canvas): ShooterView {
  const { cutRad, lead } = scene;
  const frame = frameOf(scene, canvas);
  const { toX, cy, radiusPx, growth } = frame;
  const objectBall = { cx: toX(0), cy, r: radiusPx };
  const ghostBall = { cx: toX(frame.ghostM), cy, r: radiusPx * growth };
  const leadBall = lead === 'object-ball' ? objectBall : ghostBall;
  const aimX = frame.marksM && toX(frame.marksM.aimM);
  const stickX = frame.marksM && toX(frame.marksM.stickM);
  const { floorY } = frame;
  const marks = placeMarks(aimX, stickX, cy - ghostBall.r, canvas);
  const ballNames = placeBallNames(objectBall, ghostBall, cutRad, [aimX, stickX], canvas);
  const names = namesOf(marks, ballNames, canvas.textPx);
  const scaleNote = frame.isWidened ? placeScaleNote(aimX, canvas) : null;
  const ghostGrip = gripOf(ghostBall, cutRad, [aimX, stickX]);
  const bandLabels = bandLabelsOf(marks.aim, {
    names,
    scaleNote,
    balls: [objectBall, ghostBall],
    handle: ghostGrip,
    canvas,
  });
  return {
    objectBall,
    ghostBall,
    ...ballNames,
    band: bandOf(scene.bandRad, scene, frame, canvas),
    haze: bandOf(scene.sureRad, scene, frame, canvas),
    ...marks,
    bandLabels,
    names: [...names, ...bandNames(scene, bandLabels, canvas)],
    ruler: layOutRuler(leadBall, aimX, floorY, canvas),
    topY: frame.topY,
    near: nearOf(scene.tip, aimX, stickX, ghostBall.cx, floorY, frame, canvas),
    held: heldOf(scene, frame, ghostBall.cx, floorY, canvas),
    ghostGrip,
    pxPerM: radiusPx / scene.ballRadiusM,
    ballsAcross: canvas.widthPx / (2 * radiusPx),
    scaleNote,
  };
}

/** Half the width of the ghost ball's handle, px. */
const HANDLE_PX = 12;
/** Where it may stand on the rim: degrees above level, on the side away from the object ball. */
const GRIP_DEG = [30, 10, 70, 110];

/**
 * On the ghost ball's rim, away from the object ball; or just beyond it: where it is clear of the
 * lines of aim and stick, else where it is least in their way.
 */
function gripOf({ cx, cy, r }: Circle, cutRad: number, linesX: readonly (number | null)[]): Point {
  const side = cutRad >= 0 ? -1 : 1;
  const at = (deg: number, out: number): Point => {
    const rad = (deg * Math.PI) / 180;
    return { x: cx + side * out * Math.cos(rad), y: cy - out * Math.sin(rad) };
  };
  const clearPx = ({ x }: Point) =>
    Math.min(...linesX.map((lineX) => (lineX === null ? HANDLE_CLEAR_PX : Math.abs(x - lineX))));
  const rim = Math.max(r, LEAST_OUT_PX);
  const places = [...GRIP_DEG.map((deg) => at(deg, rim)), at(15, rim + 2 * HANDLE_PX)];
  const clearest = Math.max(...places.map(clearPx));
  const wanted = Math.min(clearest, HANDLE_CLEAR_PX);
  return places.find((place) => clearPx(place) >= wanted) ?? at(30, rim);
}

/** On a small ball the handle would touch the ball's name, px. */
const LEAST_OUT_PX = 34;

/** From the handle's middle to the middle of a line that it does not touch, px. */
const HANDLE_CLEAR_PX = HANDLE_PX + 3;
/** Of "view 5.1 balls wide". */
const NOTE_LETTERS = 19;

function bandLabelsOf(
  aim: Mark | null,
  around: {
    readonly names: readonly PlacedName[];
    readonly scaleNote: Label | null;
    readonly balls: readonly Circle[];
    readonly handle: Point;
    readonly canvas: Canvas;
  },
): readonly Label[] {
  const { scaleNote, balls, handle, canvas } = around;
  if (aim === null) return [];
  const note = scaleNote ? [boxOf(scaleNote, NOTE_LETTERS, canvas.textPx)] : [];
  return placeBandNames(
    aim.label,
    {
      names: [...around.names.map(({ box }) => box), ...note],
      balls,
      handle: { cx: handle.x, cy: handle.y, r: HANDLE_PX },
    },
    canvas,
  );
}

function bandNames(
  { bandRad, sureRad }: ShooterScene,
  [goes, sure]: readonly Label[],
  { textPx }: Canvas,
): readonly PlacedName[] {
  const named = (part: 'band' | 'haze', label: Label | undefined, isThere: boolean) =>
    label && isThere ? [{ part, box: boxOf(label, BAND_LETTERS, textPx) }] : [];
  return [...named('band', goes, bandRad !== null), ...named('haze', sure, sureRad !== null)];
}

function bandOf(
  rad: ShooterScene['bandRad'],
  scene: ShooterScene,
  frame: Frame,
  canvas: Canvas,
): Band | null {
  if (rad === null) return null;
  const edge = (aimRad: number) => {
    const x = frame.toX(frame.inView(aimOffsetM(scene, scene.ballRadiusM, scene.lead, aimRad)));
    return Math.min(canvas.widthPx, Math.max(0, x));
  };
  return { fromX: edge(rad.low), toX: edge(rad.high) };
}

function nearOf(
  tip: TipOnBall,
  aimX: number | null,
  stickX: number | null,
  cx: number,
  floorY: number,
  { near }: Frame,
  canvas: Canvas,
): NearBall | null {
  if (near === null) return null;
  const lines = aimX === null || stickX === null ? null : { aimX, stickX };
  return layOutNearBall({ cx, cy: near.cy, r: near.radiusPx }, tip, lines, floorY, canvas);
}

function heldOf(
  { held, lead }: ShooterScene,
  frame: Frame,
  ghostX: number,
  floorY: number,
  canvas: Canvas,
): HeldLines | null {
  if (held === null) return null;
  const onObject = lead === 'object-ball';
  const aimX = frame.toX(frame.inView(onObject ? held.aimOnObjectBallM : held.aimOffsetM));
  const stickX = frame.toX(frame.inView(onObject ? held.stickOnObjectBallM : held.stickOffsetM));
  return { aimX, stickX, near: nearOf(held.tip, aimX, stickX, ghostX, floorY, frame, canvas) };
}
