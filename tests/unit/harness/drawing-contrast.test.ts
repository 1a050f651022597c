import { expect, it } from 'vitest';
import { contrastRatio } from '../../harness/contrast';
import { faint } from '../../harness/drawing-contrast';

const NOTHING = { css: 'none', alpha: 1 };
const grey = (level: number, alpha = 1) => ({ css: `rgb(${level}, ${level}, ${level})`, alpha });
const mark = {
  name: 'a line',
  isText: false,
  fill: NOTHING,
  stroke: grey(255),
  page: 'rgb(0, 0, 0)',
  under: [[]],
};
const AA = { lines: 3, text: 4.5 };

it('reckons contrast as WCAG 2 does', () => {
  expect(contrastRatio([255, 255, 255], [0, 0, 0])).toBeCloseTo(21, 9);
  // Commonly cited as the lightest grey that passes 4.5:1 on white; common practice, no source.
  expect(contrastRatio([118, 118, 118], [255, 255, 255])).toBeCloseTo(4.54, 2);
});

it('finds what is faint against the page, against an area before it, or for its own opacity', () => {
  expect(faint([mark], AA)).toEqual([]);
  expect(faint([{ ...mark, stroke: grey(60) }], AA)).toHaveLength(1);
  expect(faint([{ ...mark, under: [[grey(230)]] }], AA)).toHaveLength(1);
  expect(faint([{ ...mark, stroke: grey(255, 0.2) }], AA)).toHaveLength(1);
  expect(faint([{ ...mark, stroke: NOTHING }], AA)).toEqual([]);
});

it('lets a line cross an area of its own colour, but not for more than half its length', () => {
  const bright = [grey(230)];
  expect(faint([{ ...mark, under: [bright, bright, [], [], []] }], AA)).toEqual([]);
  expect(faint([{ ...mark, under: [bright, bright, bright, [], []] }], AA)).toHaveLength(1);
});

it('reads a text against its halo', () => {
  const text = { ...mark, isText: true, fill: grey(255), stroke: grey(0), under: [[grey(250)]] };
  expect(faint([text], AA)).toEqual([]);
  expect(faint([{ ...text, stroke: NOTHING }], AA)).toHaveLength(1);
  expect(faint([{ ...text, fill: grey(100) }], AA)).toHaveLength(1);
});
