import type { Circle, Point } from './canvas';
import { boxPx } from './name-boxes';
import type { Segment } from './overhead-view';
import type { Band, ShooterView } from './shooter-view';

/** What a tap on the drawing from behind the cue can be about. */
export type ShooterPart =
  | 'aim'
  | 'cue'
  | 'band'
  | 'haze'
  | 'held'
  | 'tip'
  | 'limit'
  | 'ghost-ball'
  | 'object-ball'
  | 'cue-ball';

/** Half of what a fingertip covers, px. */
const FINGER_PX = 22;
/** A name is meant more than a line that crosses it, by so many px. */
const NAME_PX = 1;
/** What has an area is meant less than a line that lies on it, by so many px. */
const BAND_PX = 5;
const BALL_PX = 14;

/** Every part that is drawn, in the order in which one learns them. */
export function partsOf(view: ShooterView): readonly ShooterPart[] {
  const { near } = view;
  const drawn: readonly (readonly [ShooterPart, unknown])[] = [
    ['object-ball', true],
    ['ghost-ball', true],
    ['aim', view.aim],
    ['cue', view.stick ?? near?.lines],
    ['band', view.band],
    ['haze', view.haze],
    ['cue-ball', near],
    ['tip', near],
    ['limit', near],
    ['held', view.held],
  ];
  return drawn.filter(([, isThere]) => isThere).map(([part]) => part);
}

/**
 * What lies under a finger, what it is likeliest to mean first. A name goes before what it is
 * written over, lines before what they cross.
 * @param at px
 */
export function partsAt(view: ShooterView, at: Point): readonly ShooterPart[] {
  const isNear = at.y > view.ruler.y;
  const found = isNear ? nearParts(view, at) : farParts(view, at);
  const meant = found.filter(({ px }) => px <= FINGER_PX).sort((a, b) => a.px - b.px);
  return [...new Set(meant.map(({ part }) => part))];
}

interface Found {
  readonly part: ShooterPart;
  /** How far off the finger is, and how little it may be meant. */
  readonly px: number;
}

function farParts(view: ShooterView, at: Point): Found[] {
  const { aim, stick, band, haze, held } = view;
  return [
    ...(aim ? [{ part: 'aim', px: Math.abs(at.x - aim.x) } as const] : []),
    ...(stick ? [{ part: 'cue', px: Math.abs(at.x - stick.x) } as const] : []),
    ...(held ? [{ part: 'held', px: heldPx(held, at.x) } as const] : []),
    ...(band ? [{ part: 'band', px: bandPx(band, at.x) } as const] : []),
    ...(haze ? [{ part: 'haze', px: bandPx(haze, at.x) + 1 } as const] : []),
    ...view.names.map(({ part, box }) => ({ part, px: boxPx(box, at.x, at.y) - NAME_PX })),
    { part: 'ghost-ball', px: rimPx(view.ghostBall, at) },
    { part: 'object-ball', px: rimPx(view.objectBall, at) + 1 },
  ];
}

function nearParts({ near, held }: ShooterView, at: Point): Found[] {
  if (!near) return [];
  const { ball, limit, tip, lines } = near;
  const fromTip = Math.hypot(at.x - tip.cx, at.y - tip.cy);
  const lined: Found[] = lines
    ? [
        { part: 'aim', px: segmentPx(lines.aim, at) },
        { part: 'cue', px: 1 + Math.min(segmentPx(lines.cue, at), shaftPx(lines.shaft, at)) },
      ]
    : [];
  const other = held?.near?.lines;
  return [
    ...lined,
    ...(other
      ? [
          {
            part: 'held',
            px: Math.min(segmentPx(other.aim, at), segmentPx(other.cue, at)),
          } as const,
        ]
      : []),
    { part: 'tip', px: Math.max(0, fromTip - tip.r) },
    { part: 'limit', px: 3 + Math.abs(Math.hypot(at.x - ball.cx, at.y - ball.cy) - limit.r) },
    { part: 'cue-ball', px: rimPx(ball, at) },
  ];
}

function heldPx(held: { readonly aimX: number; readonly stickX: number }, x: number): number {
  return Math.min(Math.abs(x - held.aimX), Math.abs(x - held.stickX));
}

function bandPx({ fromX, toX }: Band, x: number): number {
  return BAND_PX + Math.max(0, fromX - x, x - toX);
}

function rimPx({ cx, cy, r }: Circle, at: Point): number {
  return BALL_PX + Math.max(0, Math.hypot(at.x - cx, at.y - cy) - r);
}

function shaftPx(shaft: readonly Point[], at: Point): number {
  const [a, b, c, d] = shaft;
  if (!a || !b || !c || !d) return Number.POSITIVE_INFINITY;
  const mid = (one: Point, other: Point) => ({
    x: (one.x + other.x) / 2,
    y: (one.y + other.y) / 2,
  });
  const half = Math.hypot(a.x - d.x, a.y - d.y) / 2;
  return Math.max(0, segmentPx({ from: mid(a, d), to: mid(b, c) }, at) - half);
}

/** How far a point is from a stretch of a line. */
function segmentPx({ from, to }: Segment, at: Point): number {
  const [wx, wy] = [to.x - from.x, to.y - from.y];
  const length2 = Math.max(wx * wx + wy * wy, 1e-9);
  const share = ((at.x - from.x) * wx + (at.y - from.y) * wy) / length2;
  const on = Math.min(1, Math.max(0, share));
  return Math.hypot(at.x - from.x - on * wx, at.y - from.y - on * wy);
}
