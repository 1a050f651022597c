import type { PocketName } from '../engine/table/pocket-shape';
import { type Canvas, type Circle, type Label, type Point, textWidthPx } from './canvas';
import type { Rect } from './trial-view';

/** Room on the drawing that a word must not take, px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What is to be written at a pocket. */
export interface PocketWord {
  readonly name: PocketName;
  readonly hole: Circle;
  readonly word: string;
}

/** Words that want to stand on the table, those first that are placed first. */
export interface WantedWords {
  /** Over each of the crosses on what is in the way. */
  readonly crosses: readonly Point[];
  readonly pockets: readonly PocketWord[];
  /** Of the middle of the zone. */
  readonly zone: Point | null;
}

/** Where words stand; null, or left out, where no room is left. */
export interface PlacedWords {
  readonly crosses: readonly (Label | null)[];
  readonly pockets: ReadonlyMap<PocketName, Label>;
  readonly zone: Label | null;
  /** What the words take. */
  readonly taken: readonly Box[];
}

export const IN_THE_WAY = 'in the way';
export const ZONE = 'zone';

/** Half of a cross on what is in the way, and of the mark in the middle of a zone, px. */
const CROSS_PX = 11;
const MARK_PX = 5;
/** A pocket's word keeps so far off its hole, px. */
const GAP_PX = 5;

const NO_WORDS: PlacedWords = { crosses: [], pockets: new Map(), zone: null, taken: [] };

/**
 * Places words so that none lies on a ball, on a pocket, or on another word.
 * @param keepOff gives balls and pockets as they are drawn; asked only where there is a word
 * @param bed from nose to nose
 */
export function placeWords(
  wanted: WantedWords,
  keepOff: () => readonly Circle[],
  bed: Rect,
  canvas: Canvas,
): PlacedWords {
  if (isNothing(wanted)) return NO_WORDS;
  const marks = wanted.crosses.map(({ x, y }) => ({ cx: x, cy: y, r: CROSS_PX }));
  const middle = wanted.zone && { cx: wanted.zone.x, cy: wanted.zone.y, r: MARK_PX };
  const circles = [...keepOff(), ...marks, ...(middle ? [middle] : [])];
  const taken = circles.map(boxAround);
  const first = taken.length;
  const around = (point: Point | null, word: string) =>
    point && placeWord(word, aroundPoint(point, word, canvas.textPx), canvas, taken);
  const crosses = wanted.crosses.map((point) => around(point, IN_THE_WAY));
  const pockets = new Map<PocketName, Label>();
  for (const { name, hole, word } of wanted.pockets) {
    const label = placeWord(word, intoBed(hole, bed, word, canvas.textPx), canvas, taken);
    if (label) pockets.set(name, label);
  }
  const zone = around(wanted.zone, ZONE);
  return { crosses, pockets, zone, taken: taken.slice(first) };
}

/** As in most moves of a ball. */
function isNothing({ crosses, pockets, zone }: WantedWords): boolean {
  return crosses.length === 0 && pockets.length === 0 && zone === null;
}

/** The first of some middles at which a word is clear of all that is taken; it is then taken too. */
export function placeWord(
  word: string,
  middles: Iterable<Point>,
  { widthPx, heightPx, textPx }: Canvas,
  taken: Box[],
): Label | null {
  const half = halfWidth(word, textPx);
  for (const { x, y } of middles) {
    const box = { left: x - half, right: x + half, top: y - textPx / 2, bottom: y + textPx / 2 };
    const isWithin =
      box.left >= 0 && box.right <= widthPx && box.top >= 0 && box.bottom <= heightPx;
    if (!isWithin || taken.some((other) => overlap(box, other))) continue;
    taken.push(box);
    return { x, y: y + textPx * 0.35, anchor: 'middle' };
  }
  return null;
}

/** A letter by itself takes a square. */
function halfWidth(word: string, textPx: number): number {
  return Math.max(textPx, textWidthPx(word.length, textPx)) / 2;
}

/** How far off a word may stand, in heights of text: the nearer the better. */
const RINGS = [1, 1.7, 2.5, 3.5];
/** To the right first, then left, above, below and between. */
const TURNS = [0, 4, 6, 2, 7, 1, 5, 3];

/** Middles for a word beside a point, nearer ones first. */
export function* aroundPoint({ x, y }: Point, word: string, textPx: number): Generator<Point> {
  const more = halfWidth(word, textPx) - textPx / 2;
  for (const ring of RINGS) {
    for (const turn of TURNS) {
      const [cos, sin] = [Math.cos((turn * Math.PI) / 4), Math.sin((turn * Math.PI) / 4)];
      yield { x: x + cos * (ring * textPx + more), y: y + sin * ring * textPx };
    }
  }
}

/** Steps, in heights of text, for a word whose first place at its pocket is taken. */
const STEPS = [0, 1, 2, 3];

/** Middles for a word at a pocket: on the bed, and from there along the rails and away from them. */
function* intoBed({ cx, cy, r }: Circle, bed: Rect, word: string, textPx: number) {
  const across = Math.sign(Math.round(bed.x + bed.width / 2 - cx));
  const down = Math.sign(Math.round(bed.y + bed.height / 2 - cy));
  const x = cx + across * (r + GAP_PX + halfWidth(word, textPx));
  const y = cy + down * (r + GAP_PX + textPx / 2);
  for (const step of STEPS) {
    const stepPx = step * textPx;
    const [acrossPx, downPx] = [across * stepPx, down * stepPx];
    yield { x: x + (across === 0 ? stepPx : acrossPx), y };
    if (across === 0) yield { x: x - stepPx, y };
    yield { x, y: y + (down === 0 ? stepPx : downPx) };
    if (down === 0) yield { x, y: y - stepPx };
  }
}

export function boxAround({ cx, cy, r }: Circle): Box {
  return { left: cx - r, right: cx + r, top: cy - r, bottom: cy + r };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
