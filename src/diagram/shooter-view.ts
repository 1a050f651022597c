import type { AimMark } from '../units/unit-names';
import { aimOffsetM } from './aim-offset';
import { layOutRuler, type Ruler } from './ball-ruler';
import type { Canvas, Circle, Label } from './canvas';
import { type Mark, placeBallNames, placeMarks, placeScaleNote } from './view-labels';

/** What the shooter's-eye drawing shows. Lengths in m, angles in rad, right +. */
export interface ShooterScene {
  readonly ballRadiusM: number;
  readonly distanceM: number;
  readonly cutRad: number;
  /** The ruler's zero: the centre of this ball. */
  readonly lead: AimMark;
  /** Where the aim line and the stick's axis pass; null while there is no answer. */
  readonly marks: {
    readonly aimOffsetM: number;
    readonly aimOnObjectBallM: number;
    readonly stickOffsetM: number;
    readonly stickOnObjectBallM: number;
  } | null;
  /** The aims between which the ball still goes; null while they are not known. */
  readonly bandRad: { readonly low: number; readonly high: number } | null;
}

/** An upright band of the view, px. */
export interface Band {
  readonly fromX: number;
  readonly toX: number;
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
  /** Null where the stick's axis passes as good as on the aim line. */
  readonly stick: Mark | null;
  readonly ruler: Ruler;
  /** How many ball widths the view spans. */
  readonly ballsAcross: number;
  /** Where to tell that; null while the view spans no more than it mostly does. */
  readonly scaleNote: Label | null;
}

/** Ball widths on either side of the pair's middle that are always in view. */
const USUAL_HALF_SPAN_BALLS = 1.2;
/** A view of more ball widths than this is told, for the balls in it look small. */
const TOLD_SPAN_BALLS = 3;
/** Clear ball widths kept beyond a mark, so that its surroundings show. */
const BEYOND_MARK_BALLS = 0.35;
/** Nearer than this the ghost ball would dwarf the object ball, so it stops growing. */
const MAX_GHOST_GROWTH = 1.3;

/**
 * Lays out the object ball and the ghost ball as seen from the cue ball: a central projection from
 * the cue ball's centre onto the plane through the object ball's centre, square to the straight
 * line. Every line through the cue ball's centre is upright in it, so one mark reads true against
 * both balls. Within about 0.2 m the ghost ball is drawn smaller than so seen, and the mark is
 * true to the leading ball only.
 */
export function layOutShooterView(scene: ShooterScene, canvas: Canvas): ShooterView {
  const { ballRadiusM: radiusM, cutRad, lead } = scene;
  const growth = ghostGrowth(scene);
  const objectM = 2 * radiusM * Math.sin(cutRad);
  const inView = (offsetM: number) =>
    lead === 'object-ball' ? objectM + offsetM : offsetM * growth;
  const marksM = marksOf(scene, inView);
  const spanM = spanOf(radiusM, objectM, marksM);
  const bands = bandsOf(canvas);
  const room = Math.max(20, bands.bottom - bands.top);
  const pxPerM = Math.min(
    canvas.widthPx / (spanM.right - spanM.left),
    room / (2 * radiusM * growth),
  );
  const middleM = (spanM.left + spanM.right) / 2;
  const toX = (xM: number) => canvas.widthPx / 2 + (xM - middleM) * pxPerM;
  const cy = (bands.top + bands.bottom) / 2;
  const objectBall = { cx: toX(objectM), cy, r: radiusM * pxPerM };
  const ghostBall = { cx: toX(0), cy, r: radiusM * growth * pxPerM };
  const leadBall = lead === 'object-ball' ? objectBall : ghostBall;
  const bandEdge = (aimRad: number) => {
    const x = toX(inView(aimOffsetM(scene, radiusM, lead, aimRad)));
    return Math.min(canvas.widthPx, Math.max(0, x));
  };
  const aimX = marksM && toX(marksM.aimM);
  const stickX = marksM && toX(marksM.stickM);
  const ballsAcross = canvas.widthPx / (2 * radiusM * pxPerM);
  return {
    objectBall,
    ghostBall,
    ...placeBallNames(objectBall, ghostBall, cutRad, [aimX, stickX], canvas),
    band: scene.bandRad && {
      fromX: bandEdge(scene.bandRad.low),
      toX: bandEdge(scene.bandRad.high),
    },
    ...placeMarks(aimX, stickX, cy - ghostBall.r, canvas),
    ruler: layOutRuler(leadBall, aimX, cy + ghostBall.r, canvas),
    ballsAcross,
    scaleNote: spanM.widened ? placeScaleNote(aimX, canvas) : null,
  };
}

function ghostGrowth(scene: ShooterScene): number {
  const behindM = 2 * scene.ballRadiusM * Math.cos(scene.cutRad);
  return Math.min(MAX_GHOST_GROWTH, (scene.distanceM + behindM) / scene.distanceM);
}

interface MarksM {
  readonly aimM: number;
  readonly stickM: number;
}

/** @param inView places what passes so far from the leading ball's centre, m from the ghost ball's */
function marksOf(
  { marks, lead }: ShooterScene,
  inView: (offsetM: number) => number,
): MarksM | null {
  if (!marks) return null;
  const onObject = lead === 'object-ball';
  return {
    aimM: inView(onObject ? marks.aimOnObjectBallM : marks.aimOffsetM),
    stickM: inView(onObject ? marks.stickOnObjectBallM : marks.stickOffsetM),
  };
}

function spanOf(radiusM: number, objectM: number, marks: MarksM | null) {
  const usualM = USUAL_HALF_SPAN_BALLS * 2 * radiusM;
  const beyondM = BEYOND_MARK_BALLS * 2 * radiusM;
  const usual = { left: objectM / 2 - usualM, right: objectM / 2 + usualM };
  if (!marks) return { ...usual, widened: false };
  const toldM = TOLD_SPAN_BALLS * 2 * radiusM;
  const left = Math.min(usual.left, Math.min(marks.aimM, marks.stickM) - beyondM);
  const right = Math.max(usual.right, Math.max(marks.aimM, marks.stickM) + beyondM);
  return { left, right, widened: right - left > toldM };
}

/** The names of the marks stand above the balls, the ruler and its figures below. */
function bandsOf({ heightPx, textPx }: Canvas) {
  return { top: textPx * 1.7, bottom: heightPx - textPx * 2.1 };
}
