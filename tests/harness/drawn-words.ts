import type { Page } from 'playwright-core';

interface Drawn {
  readonly name: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Words of the table's drawing that lie over one another, over a ball, or beyond the screen. */
export async function faultsOfWords(page: Pick<Page, 'evaluate'>): Promise<string[]> {
  const { words, balls, screenPx } = await drawnOnTable(page);
  if (words.length === 0) return ['there are no words'];
  return words.flatMap((word, at) => {
    const under = [...words.slice(at + 1), ...balls].filter((other) => isOver(word, other));
    const isCut = word.left < -1 || word.right > screenPx + 1;
    const cut = isCut ? [`${word.name} is cut off`] : [];
    return [...cut, ...under.map(({ name }) => `${word.name} lies over ${name || 'a ball'}`)];
  });
}

function drawnOnTable(page: Pick<Page, 'evaluate'>) {
  return page.evaluate(() => {
    const boxes = (selector: string): Drawn[] =>
      [...document.querySelectorAll(`.table-board ${selector}`)].map((one) => {
        const { left, right, top, bottom } = one.getBoundingClientRect();
        // A line of text is higher than its letters by about a fifth above and below.
        const trim = one.tagName === 'text' ? 0.2 * (bottom - top) : 0;
        const name = one.textContent ?? '';
        return { name, left, right, top: top + trim, bottom: bottom - trim };
      });
    const words = boxes('text:not(.ball-number)');
    return { words, balls: boxes('.ball-body'), screenPx: innerWidth };
  });
}

/** By more than a pixel. */
function isOver(a: Drawn, b: Drawn): boolean {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return across > 1 && down > 1;
}
