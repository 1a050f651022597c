import { type Canvas, type Circle, textWidthPx } from './canvas';

export interface Tick {
  readonly x: number;
  /** Ball widths from zero, right +. */
  readonly balls: number;
  readonly size: 'whole' | 'half' | 'quarter';
  /** Empty where there is no room for a figure. */
  readonly text: string;
}

/** A rule marked in widths of the leading ball, with zero at its centre. */
export interface Ruler {
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
  readonly zeroX: number;
  /** From zero to the aim line; null while there is no answer. */
  readonly aimX: number | null;
  readonly ticks: readonly Tick[];
}

/** A ball drawn at least this wide carries quarter marks, px. */
const QUARTERS_FROM_PX = 84;
/** Letters between the middles of "edge" and "1 ball", half a ball apart, and a space. */
const EDGE_LETTERS = 6;
/** Letters of the words at the two ends, with their arrows. */
const END_WORD_LETTERS = 7;

/** Lays the rule `y` px down the canvas under the leading ball. */
export function layOutRuler(
  leadBall: Circle,
  aimX: number | null,
  y: number,
  canvas: Canvas,
): Ruler {
  const ballPx = 2 * leadBall.r;
  const perBall = ballPx >= QUARTERS_FROM_PX ? 4 : 2;
  const first = Math.ceil(((0 - leadBall.cx) / ballPx) * perBall);
  const last = Math.floor(((canvas.widthPx - leadBall.cx) / ballPx) * perBall);
  const ticks: Tick[] = [];
  for (let i = first; i <= last; i++) {
    const x = leadBall.cx + (i / perBall) * ballPx;
    const balls = i / perBall;
    ticks.push({ x, balls, size: sizeOf(balls), text: figureAt(balls, x, ballPx, canvas) });
  }
  return { y, fromX: 0, toX: canvas.widthPx, zeroX: leadBall.cx, aimX, ticks };
}

function sizeOf(balls: number): Tick['size'] {
  if (Number.isInteger(balls)) return 'whole';
  return Number.isInteger(balls * 2) ? 'half' : 'quarter';
}

function figureAt(balls: number, x: number, ballPx: number, canvas: Canvas): string {
  const text = figureOf(balls, ballPx, canvas.textPx);
  const reserved = textWidthPx(END_WORD_LETTERS + text.length / 2, canvas.textPx);
  return x < reserved || x > canvas.widthPx - reserved ? '' : text;
}

function figureOf(balls: number, ballPx: number, textPx: number): string {
  const size = sizeOf(balls);
  if (size === 'quarter') return '';
  const whole = Math.floor(Math.abs(balls));
  // Half a ball from the centre is the ball's own edge, which is how a player finds it.
  const hasEdges = ballPx / 2 >= textWidthPx(EDGE_LETTERS, textPx);
  if (size === 'half') return whole === 0 && hasEdges ? 'edge' : '';
  if (whole % figureEvery(ballPx, textPx) !== 0) return '';
  const crowded = ballPx < textWidthPx(7, textPx);
  return whole === 1 && !crowded ? '1 ball' : `${whole}`;
}

/** How many balls lie between two figures, so that the figures stay apart. */
function figureEvery(ballPx: number, textPx: number): number {
  const room = textWidthPx(4, textPx);
  return [1, 2, 5, 10, 20].find((balls) => balls * ballPx >= room) ?? 50;
}
