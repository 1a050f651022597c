// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { sharePort } from '../../../src/sensors/share-port';

/** What this page's media queries find true. */
let media: string[] = [];

beforeEach(() => {
  vi.useFakeTimers();
  media = [];
  vi.spyOn(window, 'matchMedia').mockImplementation(
    (query) => ({ matches: media.some((one) => query.includes(one)) }) as MediaQueryList,
  );
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  for (const name of ['share', 'canShare', 'standalone']) Reflect.deleteProperty(navigator, name);
});

function giveNavigator(has: Readonly<Record<string, unknown>>) {
  for (const [name, value] of Object.entries(has)) {
    Object.defineProperty(navigator, name, { configurable: true, value });
  }
}

const SHEET = { share: async () => undefined, canShare: () => true };

describe('whether a page prefers a share sheet', () => {
  it.each([
    ['by finger', ['pointer: coarse'], SHEET, true],
    ['installed', ['display-mode: standalone'], SHEET, true],
    ['installed where display-mode is unknown', [], { ...SHEET, standalone: true }, true],
    ['in a tab, by mouse', [], { ...SHEET, standalone: false }, false],
    ['by finger, but there is none', ['pointer: coarse'], {}, false],
    ['by finger, but it takes no files', ['pointer: coarse'], { share: SHEET.share }, false],
  ])('%s', (_, found, has, expected) => {
    media = found;
    giveNavigator(has);
    expect(sharePort().prefersSheet).toBe(expected);
  });
});

it('asks the browser about, and hands it, files and nothing else', async () => {
  const [share, canShare] = [vi.fn(async () => undefined), vi.fn(() => true)];
  giveNavigator({ share, canShare });
  const files = [new File(['a'], 'a.txt', { type: 'text/plain' })];
  expect(sharePort().canShare(files)).toBe(true);
  expect(canShare).toHaveBeenCalledWith({ files });
  await sharePort().share(files);
  expect(share).toHaveBeenCalledWith({ files });
});

it('downloads under the file’s own name, and frees the memory once that is surely done', () => {
  const file = new File(['a'], 'invented.json', { type: 'application/json' });
  vi.spyOn(URL, 'createObjectURL').mockReturnValue('blob:invented');
  const revoke = vi.spyOn(URL, 'revokeObjectURL').mockReturnValue(undefined);
  const clicked: [string, string][] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    clicked.push([this.href, this.download]);
  });
  sharePort().download(file);
  expect(URL.createObjectURL).toHaveBeenCalledWith(file);
  expect(clicked).toEqual([['blob:invented', 'invented.json']]);
  vi.advanceTimersByTime(10_000);
  expect(revoke).not.toHaveBeenCalled();
  vi.advanceTimersByTime(600_000);
  expect(revoke).toHaveBeenCalledWith('blob:invented');
});
