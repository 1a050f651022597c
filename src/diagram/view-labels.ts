import { type Canvas, type Circle, type Label, textWidthPx } from './canvas';
import { type Box, boxOf } from './name-boxes';

/** A vertical line through the view, and where its name stands. */
export interface Mark {
  readonly x: number;
  readonly label: Label;
  /** Whether only a short name has room. */
  readonly isShort?: boolean;
  /** Whether its line runs into the aim's. */
  readonly isClose?: boolean;
}

type X = number | null;

/** Closer than this the two marks' lines run into each other, px. */
const CLOSE_PX = 5;

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
const NAMED_FROM = 1.75;
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
  const isClose = Math.abs(stickX - aimX) < CLOSE_PX;
  const wanted = stickX > aimX ? -1 : 1;
  const aimSide = sideWithRoom(aimX, wanted, AIM_LETTERS, canvas);
  const isShort = sideWithRoom(stickX, -wanted, STICK_LETTERS, canvas) === wanted;
  const stickLetters = isShort ? SHORT_LETTERS : STICK_LETTERS;
  const stickSide = sideWithRoom(stickX, -wanted, stickLetters, canvas);
  const lower = aimSide === stickSide ? canvas.textPx * 1.4 : 0;
  const stick = nextTo(stickX, stickSide, stickLetters, y + lower, canvas);
  return {
    aim: { x: aimX, label: nextTo(aimX, aimSide, AIM_LETTERS, y, canvas) },
    stick: { x: stickX, label: stick, isShort, isClose },
  };
}

/** Of "cue lies here" or "cue", and of "aim line". */
const STICK_LETTERS = 13;
const SHORT_LETTERS = 3;
const AIM_LETTERS = 9;
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

/** A part that has a name written in the view, and the room of that name. */
export interface PlacedName {
  readonly part: 'aim' | 'cue' | 'object-ball' | 'ghost-ball' | 'band' | 'haze';
  readonly box: Box;
}

/** The rooms of the names of marks and balls. */
export function namesOf(
  { aim, stick }: { readonly aim: Mark | null; readonly stick: Mark | null },
  balls: { readonly objectLabel: Label | null; readonly ghostLabel: Label | null },
  textPx: number,
): readonly PlacedName[] {
  const named = (
    part: PlacedName['part'],
    label: Label | null | undefined,
    letters: number,
    lines = 1,
  ) => (label ? [{ part, box: boxOf(label, letters, textPx, lines) }] : []);
  return [
    ...named('aim', aim?.label, AIM_LETTERS),
    ...named('cue', stick?.label, stick?.isShort ? SHORT_LETTERS : STICK_LETTERS),
    ...named('object-ball', balls.objectLabel, 6, NAME_LINES),
    ...named('ghost-ball', balls.ghostLabel, 5, NAME_LINES),
  ];
}
