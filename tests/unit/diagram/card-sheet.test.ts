import fc from 'fast-check';
import { expect, it } from 'vitest';
import { textWidthPx } from '../../../src/diagram/canvas';
import { CARD_SIZE, type CardBlock, inLines, layOutCard } from '../../../src/diagram/card-sheet';

const words = fc.array(fc.string({ minLength: 1, maxLength: 40 }), { maxLength: 12 });
const text = words.map((list) => list.join(' '));
const blocks = fc.array(
  fc.record<CardBlock>(
    {
      title: text,
      rows: fc.array(fc.array(text, { minLength: 2, maxLength: 7 }), { maxLength: 8 }),
      lines: fc.array(text, { maxLength: 8 }),
      drawing: fc.integer({ min: 1, max: 540 }),
      boxes: fc.integer({ min: 0, max: 20 }),
    },
    { requiredKeys: [] },
  ),
  { maxLength: 4 },
);

it('keeps all that is written within the paper, however much it is', () => {
  fc.assert(
    fc.property(blocks, (given) => {
      // One drawing a card.
      const card = given.map((block, at) => (at === 0 ? block : { ...block, drawing: 0 }));
      for (const { x, y, size, text, look } of layOutCard(card).texts) {
        const width = textWidthPx(text.length, size);
        const left = look === 'middle' ? x - width / 2 : x;
        expect(left).toBeGreaterThanOrEqual(50);
        expect(left + width).toBeLessThanOrEqual(CARD_SIZE.width - 50);
        expect(y - size).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(CARD_SIZE.height - 50);
      }
    }),
    { numRuns: 60, seed: 19 },
  );
});

it('stands over all the height of the paper, where little more would fill it', () => {
  const lines = Array.from({ length: 6 }, () => 'a line');
  const rows = Array.from({ length: 4 }, () => ['a', 'b']);
  const block = { title: 'Title', rows, lines };
  const { texts } = layOutCard([block, block]);
  const last = Math.max(...texts.map(({ y }) => y));
  // The lowest text ends within two lines of the clear edge.
  expect(last).toBeGreaterThan(CARD_SIZE.height - 60 - 2 * 42 * 1.32);
  expect(layOutCard([]).texts).toEqual([]);
});

it('writes every word once, and one size along a row', () => {
  const lines = ['one two three four five six seven eight nine ten eleven twelve thirteen'];
  const { texts } = layOutCard([{ lines, rows: [['a', 'a cell that is far too long', 'b']] }]);
  expect(texts.slice(0, 3).map(({ size }) => size)).toEqual(Array(3).fill(texts[0]?.size));
  const written = texts.slice(3).map((one) => one.text);
  expect(written.length).toBeGreaterThan(1);
  expect(written.join(' ')).toBe(lines[0]);
});

it('breaks between words alone', () => {
  expect(inLines('far too long for it', ({ length }) => length <= 5)).toEqual([
    'far',
    'too',
    'long',
    'for',
    'it',
  ]);
  expect(inLines('unbreakable', () => false)).toEqual(['unbreakable']);
});
