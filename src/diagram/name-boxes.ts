import { type Canvas, type Circle, type Label, textWidthPx } from './canvas';

/** The room that words take, px. */
export interface Box {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
}

/** From one line of words to the next, in heights of text. */
const NAME_LINE = 1.4;
/** What hangs below a line of words, in heights of text. */
const BELOW = 0.3;

/** The room of a word of so many letters, and of as many lines. */
export function boxOf(label: Label, letters: number, textPx: number, lines = 1): Box {
  const width = textWidthPx(letters, textPx);
  const fromX = label.anchor === 'start' ? label.x : label.x - width;
  const toY = label.y + textPx * (BELOW + lines - 1);
  return { fromX, toX: fromX + width, fromY: label.y - textPx, toY };
}

/** How far a point is from what the words take: 0 within it. */
export function boxPx({ fromX, toX, fromY, toY }: Box, x: number, y: number): number {
  return Math.hypot(Math.max(0, fromX - x, x - toX), Math.max(0, fromY - y, y - toY));
}

/** Whether two words run into each other. */
function meets(one: Box, other: Box): boolean {
  return (
    one.fromX < other.toX && other.fromX < one.toX && one.fromY < other.toY && other.fromY < one.toY
  );
}

/** What the names of the bands keep clear of. */
export interface Obstacles {
  readonly names: readonly Box[];
  readonly balls: readonly Circle[];
  readonly handle: Circle;
}

/** Of "how sure", with a small picture of the band before it. */
export const BAND_LETTERS = 11;
/** Balls drawn at least so large have room for names across them, px. */
const NAMED_FROM_PX = 44;

/**
 * The bands' names stand in two lines: in an upper corner that is free, else under the aim's name
 * where the balls are large. Empty where there is no room.
 */
export function placeBandNames(
  aimLabel: Label,
  { names, balls, handle }: Obstacles,
  canvas: Canvas,
): readonly Label[] {
  const { textPx, widthPx } = canvas;
  const right = linesFrom({ x: widthPx - 1, y: textPx, anchor: 'end' }, textPx);
  const left = linesFrom({ x: 1, y: textPx, anchor: 'start' }, textPx);
  const isFree = (lines: readonly Label[], circles: readonly Circle[]) =>
    lines.every((line) => {
      const box = boxOf(line, BAND_LETTERS, textPx);
      return (
        box.fromX >= 0 &&
        box.toX <= widthPx &&
        !names.some((name) => meets(name, box)) &&
        !circles.some(({ cx, cy, r }) => boxPx(box, cx, cy) < r)
      );
    });
  const corner = [right, left].find((lines) => isFree(lines, [...balls, handle]));
  if (corner) return corner;
  const isLarge = balls.every(({ r }) => r >= NAMED_FROM_PX);
  const under = [1, 2].map((down) =>
    linesFrom({ ...aimLabel, y: aimLabel.y + down * NAME_LINE * textPx }, textPx),
  );
  return (isLarge && under.find((lines) => isFree(lines, [handle]))) || [];
}

function linesFrom(first: Label, textPx: number): readonly Label[] {
  return [first, { ...first, y: first.y + NAME_LINE * textPx }];
}
