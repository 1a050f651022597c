import type { Canvas } from './canvas';
import type { ShooterScene } from './shooter-scene';

/** Where the view's metres lie on the canvas. Metres from the object ball's centre, right +. */
export interface Frame {
  readonly toX: (xM: number) => number;
  /** Places what passes so far from the leading ball's centre, in the plane of the view. */
  readonly inView: (offsetM: number) => number;
  readonly ghostM: number;
  readonly marksM: { readonly aimM: number; readonly stickM: number } | null;
  /** The object ball's radius, px. */
  readonly radiusPx: number;
  /** The ghost ball's, in radii of the object ball. */
  readonly growth: number;
  /** Of both balls' centres. */
  readonly cy: number;
  readonly floorY: number;
  readonly topY: number;
  /** The cue ball in front; null where the height has no room for it. */
  readonly near: { readonly cy: number; readonly radiusPx: number } | null;
  /** Whether far marks have made the view span more than it mostly does. */
  readonly isWidened: boolean;
}

/** Ball widths on either side of the object ball that are always in view. */
const USUAL_HALF_SPAN_BALLS = 1.4;
/** Farther marks widen the view by steps, lest the scale crawl under the thumb. */
const SPAN_STEP = 1.25;
/** Clear ball widths kept beyond a mark, so that its surroundings show. */
const BEYOND_MARK_BALLS = 0.35;
/** Nearer than this the ghost ball would dwarf the object ball, so it stops growing. */
const MAX_GHOST_GROWTH = 1.3;
/**
 * The room left for a ghost ball, in radii of the object ball: from half a metre on it takes no more,
 * so that nothing else moves while the distance changes.
 */
const GHOST_ROOM = 1.12;
/** In heights of text: the names of the marks above the balls, the ruler's figures below. */
const NAMES = 1.7;
const FIGURES = 1.95;
/** Between the figures and the cue ball in front, in heights of text. */
const GAP = 0.35;
/** A smaller cue ball in front would show no tip, px; its room goes to the far balls then. */
const LEAST_NEAR_PX = 22;
/** Kept clear under it, px. */
const FOOT_PX = 3;
/** Where it would come out smaller than this, px, its foot is left out, which no tip reaches. */
const WHOLE_FROM_PX = 40;
const CUT_OFF = 0.08;

/** Finds the scale at which balls and marks fit, and where they stand. */
export function frameOf(scene: ShooterScene, canvas: Canvas): Frame {
  const { ballRadiusM: radiusM, lead } = scene;
  const growth = ghostGrowth(scene);
  const ghostM = -2 * radiusM * Math.sin(scene.cutRad);
  const inView = (offsetM: number) =>
    lead === 'object-ball' ? offsetM : ghostM + offsetM * growth;
  const marksM = marksOf(scene, inView);
  const { halfSpanM, steps } = spanOf(radiusM, growth, ghostM, marksM);
  const widest = ((canvas.widthPx / 2) * radiusM) / halfSpanM;
  const nearScale = lead === 'object-ball' ? 1 : growth;
  const heights = heightsOf(Math.max(growth, GHOST_ROOM), nearScale, widest, canvas);
  const { radiusPx } = heights;
  const toX = (xM: number) => canvas.widthPx / 2 + (xM * radiusPx) / radiusM;
  const isWidened = steps > 0 && radiusPx === widest;
  return { toX, inView, ghostM, marksM, growth, isWidened, ...heights };
}

/** Two balls one above the other where they come out large enough, else the far ones alone. */
function heightsOf(growth: number, nearScale: number, widestPx: number, canvas: Canvas) {
  const { heightPx, textPx } = canvas;
  const fixed = textPx * (NAMES + FIGURES);
  const below = textPx * GAP + FOOT_PX;
  const stacked = (nearRadii: number) =>
    (heightPx - fixed - below) / (2 * growth + nearRadii * nearScale);
  const isWhole = Math.min(widestPx, stacked(2)) * nearScale >= WHOLE_FROM_PX;
  const shownRadii = isWhole ? 2 : 2 - CUT_OFF;
  const both = stacked(shownRadii);
  const hasNear = both * nearScale >= LEAST_NEAR_PX;
  const alone = Math.max(20, heightPx - fixed) / (2 * growth);
  const radiusPx = Math.min(widestPx, hasNear ? both : alone);
  const nearPx = radiusPx * nearScale;
  const used = fixed + 2 * growth * radiusPx + (hasNear ? below + shownRadii * nearPx : 0);
  const spare = Math.max(0, heightPx - used);
  // What height is left lengthens the lines in front, up to half a ball, and frames the whole.
  const longer = hasNear ? Math.min(spare / 2, radiusPx) : 0;
  const margin = (spare - longer) / 2;
  const cy = margin + textPx * NAMES + growth * radiusPx;
  const footPx = (shownRadii - 1) * nearPx;
  const near = { cy: heightPx - (isWhole ? margin + FOOT_PX : 0) - footPx, radiusPx: nearPx };
  return {
    radiusPx,
    cy,
    floorY: cy + growth * radiusPx,
    topY: margin,
    near: hasNear ? near : null,
  };
}

function ghostGrowth(scene: ShooterScene): number {
  const behindM = 2 * scene.ballRadiusM * Math.cos(scene.cutRad);
  return Math.min(MAX_GHOST_GROWTH, (scene.distanceM + behindM) / scene.distanceM);
}

function marksOf({ marks, lead }: ShooterScene, inView: (offsetM: number) => number) {
  if (!marks) return null;
  const onObject = lead === 'object-ball';
  return {
    aimM: inView(onObject ? marks.aimOnObjectBallM : marks.aimOffsetM),
    stickM: inView(onObject ? marks.stickOnObjectBallM : marks.stickOffsetM),
  };
}

function spanOf(radiusM: number, growth: number, ghostM: number, marks: Frame['marksM']) {
  const beyondM = BEYOND_MARK_BALLS * 2 * radiusM;
  const usualM = USUAL_HALF_SPAN_BALLS * 2 * radiusM;
  const reachM = Math.max(
    Math.abs(ghostM) + growth * radiusM,
    ...(marks ? [Math.abs(marks.aimM) + beyondM, Math.abs(marks.stickM) + beyondM] : []),
  );
  const steps = Math.max(0, Math.ceil(Math.log(reachM / usualM) / Math.log(SPAN_STEP)));
  return { halfSpanM: usualM * SPAN_STEP ** steps, steps };
}
