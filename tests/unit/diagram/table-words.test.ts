import { describe, expect, it } from 'vitest';
import type { Circle, Label } from '../../../src/diagram/canvas';
import { ballSize } from '../../../src/diagram/table-balls';
import { layOutTable } from '../../../src/diagram/table-map';
import { layOutRails } from '../../../src/diagram/table-rails';
import { placeWords } from '../../../src/diagram/table-words';
import { seededRandom } from '../../harness/seeded-random';
import { SHAPE } from '../ui/choose/invented-choose';

/** The table's room on phones 320 to 430 px wide and on a tablet; text as usual, and twice as large. */
const CANVASES = [
  [296, 178],
  [336, 202],
  [366, 220],
  [406, 244],
  [428, 860],
].flatMap(([widthPx = 0, heightPx = 0]) =>
  [13, 26].map((textPx) => ({ widthPx, heightPx, textPx })),
);

/** Common practice, no source: a letter is some 0.56 of the height of its text wide. */
const wide = (word: string, textPx: number) => Math.max(1, 0.56 * word.length) * textPx;

interface Rect {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function rectOf(label: Label, word: string, textPx: number): Rect {
  const half = wide(word, textPx) / 2;
  const middle = label.y - 0.35 * textPx;
  return {
    left: label.x - half,
    right: label.x + half,
    top: middle - textPx / 2,
    bottom: middle + textPx / 2,
  };
}

const rectAround = ({ cx, cy, r }: Circle): Rect => ({
  left: cx - r,
  right: cx + r,
  top: cy - r,
  bottom: cy + r,
});

const SLACK_PX = 1e-6;
const isOver = (a: Rect, b: Rect) =>
  a.left < b.right - SLACK_PX &&
  b.left < a.right - SLACK_PX &&
  a.top < b.bottom - SLACK_PX &&
  b.top < a.bottom - SLACK_PX;

/** Fifteen balls anywhere, two things in the way, a zone, and a word at every pocket. */
function crowded(canvas: (typeof CANVASES)[number], seed: number) {
  const random = seededRandom(seed);
  const map = layOutTable(SHAPE, canvas);
  const { pockets } = layOutRails(SHAPE, map);
  const { radiusPx } = ballSize(0.028575, map);
  const spot = () => map.toPoint({ xM: 1.2 * (random() - 0.5), yM: 2.4 * (random() - 0.5) });
  const balls = Array.from({ length: 15 }, () => {
    const { x, y } = spot();
    return { cx: x, cy: y, r: radiusPx };
  });
  const keepOff = [...balls, ...pockets.map(({ hole }) => hole)];
  const words = pockets.map(({ name, hole }) => ({ name, hole, word: 'nearly all' }));
  const wanted = { crosses: [spot(), spot()], pockets: words, zone: spot() };
  const placed = placeWords(wanted, () => keepOff, map.bed, canvas);
  const rects = [
    ...placed.crosses.map((label) => label && rectOf(label, 'in the way', canvas.textPx)),
    ...[...placed.pockets.values()].map((label) => rectOf(label, 'nearly all', canvas.textPx)),
    placed.zone && rectOf(placed.zone, 'zone', canvas.textPx),
  ].filter((rect) => rect !== null);
  return { rects, keepOff: keepOff.map(rectAround) };
}

describe.each(CANVASES)('words on a table of $widthPx by $heightPx, text $textPx px', (canvas) => {
  it('lie on no ball, no pocket and no other word, and within the drawing', () => {
    let placed = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const { rects, keepOff } = crowded(canvas, seed);
      placed += rects.length;
      for (const [index, rect] of rects.entries()) {
        const others = [...keepOff, ...rects.slice(index + 1)];
        expect(others.filter((other) => isOver(rect, other))).toEqual([]);
        expect(Math.min(rect.left, rect.top)).toBeGreaterThanOrEqual(-SLACK_PX);
        expect(rect.right).toBeLessThanOrEqual(canvas.widthPx + SLACK_PX);
        expect(rect.bottom).toBeLessThanOrEqual(canvas.heightPx + SLACK_PX);
      }
    }
    expect(placed).toBeGreaterThan(60);
  });
});

it('stand at each pocket of a bare table; twice as large on a small phone, at five at least', () => {
  const counts = CANVASES.map((canvas) => {
    const map = layOutTable(SHAPE, canvas);
    const { pockets } = layOutRails(SHAPE, map);
    const words = pockets.map(({ name, hole }) => ({ name, hole, word: '6 in 10' }));
    const wanted = { crosses: [], pockets: words, zone: null };
    const keepOff = pockets.map(({ hole }) => hole);
    const { size } = placeWords(wanted, () => keepOff, map.bed, canvas).pockets;
    return { size, isUsual: canvas.textPx === 13 };
  });
  expect(counts.filter(({ isUsual, size }) => isUsual && size !== 6)).toEqual([]);
  expect(Math.min(...counts.map(({ size }) => size))).toBeGreaterThanOrEqual(5);
});
