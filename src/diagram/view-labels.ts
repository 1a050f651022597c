import { type Canvas, type Circle, type Label, textWidthPx } from './canvas';

/** A vertical line through the view, and where its name stands. */
export interface Mark {
  readonly x: number;
  readonly label: Label;
  /** Whether only a short name has room. */
  readonly isShort?: boolean;
}

type X = number | null;

/** The stick's mark closer to the aim's than this is not told apart, px. */
const SAME_MARK_PX = 3;

/** In the top corner away from the marks. */
export function placeScaleNote(aimX: X, { widthPx, textPx }: Canvas): Label {
  const onLeft = aimX !== null && aimX > widthPx / 2;
  return { x: onLeft ? 0 : widthPx, y: textPx, anchor: onLeft ? 'start' : 'end' };
}

/** Each ball's name stands low beside it, on the side away from the other ball. */
export function placeBallNames(
  objectBall: Circle,
  ghostBall: Circle,
  cutRad: number,
  marksX: readonly X[],
  canvas: Canvas,
) {
  if (objectBall.r < NAMED_FROM * canvas.textPx) return { objectLabel: null, ghostLabel: null };
  const side = cutRad >= 0 ? 1 : -1;
  const floorY = objectBall.cy + objectBall.r;
  return {
    objectLabel: beside(objectBall, side, 6, floorY, marksX, canvas),
    ghostLabel: beside(ghostBall, -side, 5, floorY, marksX, canvas),
  };
}

/** Smaller balls than this, in heights of text, leave their names no room. */
const NAMED_FROM = 1.2;
/** Lines of a ball's name, each a text's height and a little. */
const NAME_LINES = 2;
const LINE_HEIGHT = 1.05;

function beside(
  ball: Circle,
  side: number,
  letters: number,
  floorY: number,
  marksX: readonly X[],
  { widthPx, textPx }: Canvas,
): Label | null {
  const y = floorY - textPx * (0.35 + LINE_HEIGHT * (NAME_LINES - 1));
  const belowCentre = Math.max(0, y - textPx * 0.8 - ball.cy);
  const reach = Math.sqrt(Math.max(0, ball.r ** 2 - belowCentre ** 2));
  const gap = textPx * 0.5;
  const width = textWidthPx(letters, textPx);
  let out = reach + gap;
  const marksOut = marksX.flatMap((x) => (x === null ? [] : [(x - ball.cx) * side]));
  for (const markOut of marksOut.sort((a, b) => a - b)) {
    if (markOut > out - gap && markOut < out + width + gap) out = markOut + gap;
  }
  const x = ball.cx + side * out;
  const end = x + side * width;
  return end < 0 || end > widthPx ? null : { x, y, anchor: side > 0 ? 'start' : 'end' };
}

/**
 * The marks' names stand just above the balls, each on the far side from the other mark. Where the
 * edge leaves no room there, the stick's is told in short; else a name turns to the other side, and
 * the stick's goes a line lower.
 */
export function placeMarks(aimX: X, stickX: X, ballTopY: number, canvas: Canvas) {
  if (aimX === null || stickX === null) return { aim: null, stick: null };
  const y = Math.max(canvas.textPx, ballTopY - canvas.textPx * 0.8);
  const same = Math.abs(stickX - aimX) < SAME_MARK_PX;
  const wanted = stickX > aimX ? -1 : 1;
  const aimLetters = same ? BOTH_LETTERS : AIM_LETTERS;
  const aimSide = sideWithRoom(aimX, wanted, aimLetters, canvas);
  const isShort = sideWithRoom(stickX, -wanted, STICK_LETTERS, canvas) === wanted;
  const stickLetters = isShort ? SHORT_LETTERS : STICK_LETTERS;
  const stickSide = sideWithRoom(stickX, -wanted, stickLetters, canvas);
  const lower = aimSide === stickSide ? canvas.textPx * 1.4 : 0;
  const stick = nextTo(stickX, stickSide, stickLetters, y + lower, canvas);
  return {
    aim: { x: aimX, label: nextTo(aimX, aimSide, aimLetters, y, canvas) },
    stick: same ? null : { x: stickX, label: stick, isShort },
  };
}

/** Bands are named beside their marks where the balls are drawn at least so large, px. */
const NAMED_FROM_PX = 44;

/** The bands' names stand in lines under the aim's, where there is room: see {@link placeMarks}. */
export function placeBandNames(
  { aim, stick }: { readonly aim: Mark | null; readonly stick: Mark | null },
  ballPx: number,
  { textPx, widthPx }: Canvas,
): readonly Label[] {
  if (aim === null || ballPx < NAMED_FROM_PX) return [];
  const { x, y, anchor } = aim.label;
  const width = textWidthPx(BAND_LETTERS, textPx);
  if (anchor === 'start' ? x + width > widthPx : x - width < 0) return [];
  const first = stick?.label.anchor === anchor ? 2 : 1;
  return [first, first + 1].map((line) => ({ x, y: y + line * textPx * 1.4, anchor }));
}

/** Of "how sure", with a small picture of the band before it. */
const BAND_LETTERS = 11;
/** Of "cue lies here" or "cue", of "aim line", and of both in one. */
const STICK_LETTERS = 13;
const SHORT_LETTERS = 3;
const AIM_LETTERS = 9;
const BOTH_LETTERS = 17;
/** Clear space between a mark and its name, in heights of text. */
const NAME_GAP = 0.65;

function sideWithRoom(x: number, side: number, letters: number, { widthPx, textPx }: Canvas) {
  const end = x + side * (textPx * NAME_GAP + textWidthPx(letters, textPx));
  return end < 0 || end > widthPx ? -side : side;
}

/** Where neither side has room, for very large text, the name is written over its mark. */
function nextTo(x: number, side: number, letters: number, y: number, canvas: Canvas): Label {
  const { textPx, widthPx } = canvas;
  const at = x + side * textPx * NAME_GAP;
  const width = textWidthPx(letters, textPx);
  return side > 0
    ? { x: Math.min(at, widthPx - width), y, anchor: 'start' }
    : { x: Math.max(at, width), y, anchor: 'end' };
}
