import type { Canvas, Circle, Label, Point } from './canvas';
import type { Segment } from './overhead-view';

/** A raised cue from the side: the ball on the left, the butt's height on the right. */
export interface ButtView {
  readonly cloth: Segment;
  readonly ball: Circle;
  readonly cue: Segment;
  /** From the cloth up to the middle of the butt's end. */
  readonly height: Segment;
  /** Beside the height, for its figure. */
  readonly label: Label;
}

/** A ball is about this share of a cue's length across; drawn twice as large as true. */
const BALL_SHARE = 0.04;
/** Clear space for the figure, in heights of text. */
const FIGURE_WIDTH = 4.5;

/** Lays a cue out at its true elevation, as long as the canvas allows. */
export function layOutButtView(elevationRad: number, canvas: Canvas): ButtView {
  const { widthPx, heightPx, textPx } = canvas;
  const rise = Math.sin(elevationRad);
  const run = Math.cos(elevationRad);
  const roomAcross = Math.max(40, widthPx - FIGURE_WIDTH * textPx);
  const roomUp = Math.max(30, heightPx - 2 * textPx);
  const lengthPx = Math.min(roomAcross / (run + 2 * BALL_SHARE), roomUp / (rise + 2 * BALL_SHARE));
  const r = BALL_SHARE * lengthPx;
  const widePx = lengthPx * run + 2 * r + FIGURE_WIDTH * textPx;
  const leftX = Math.max(2, (widthPx - widePx) / 2);
  const clothY = (heightPx + lengthPx * rise + r) / 2;
  const tip: Point = { x: leftX + 2 * r, y: clothY - r };
  const butt: Point = { x: tip.x + lengthPx * run, y: tip.y - lengthPx * rise };
  return {
    cloth: { from: { x: leftX, y: clothY }, to: { x: butt.x + textPx, y: clothY } },
    ball: { cx: leftX + r, cy: clothY - r, r },
    cue: { from: tip, to: butt },
    height: { from: { x: butt.x, y: clothY }, to: butt },
    label: { x: butt.x + textPx * 0.6, y: (clothY + butt.y) / 2 + textPx * 0.35, anchor: 'start' },
  };
}
