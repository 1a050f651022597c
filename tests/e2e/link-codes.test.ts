import { afterEach, expect, it } from 'vitest';
import type { BallName } from '../../src/engine/lie/position';
import { linkBytes, writeLink } from '../../src/store/links/link-text';
import { SAID_IN_VERSION_1 } from '../fixtures/link-of-version-1';
import { type OpenApp, openApp } from '../harness/open-app';
import { readCodes } from '../harness/read-code';
import { settle } from '../harness/read-shot';
import { THEMES } from '../harness/screens';
import { tapButton } from '../harness/thumb';

const PHONE = { width: 390, height: 844 };
const MOST_BYTES = 300;

let app: OpenApp;
const open = async (hash: string) => {
  app = await openApp({
    hash,
    hasWorkers: false,
    context: { viewport: PHONE, deviceScaleFactor: 1 },
  });
};
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

const code = () => app.page.getByRole('img', { name: /QR code/ });
const address = () => app.page.getByRole('textbox', { name: 'As a link' }).inputValue();
/** The code as the phone shows it, one dot to a CSS pixel: a third of what its screen has. */
async function picture(): Promise<Uint8Array<ArrayBuffer>> {
  await code().waitFor();
  await settle(app.page);
  return Uint8Array.from(await code().screenshot());
}

/** A picture as a hand that shakes takes it: turned, blurred, and not from right before it. */
async function asTaken(
  png: Uint8Array,
  { turnedDeg, blurPx }: { turnedDeg: number; blurPx: number },
): Promise<Uint8Array<ArrayBuffer>> {
  const page = await app.context.newPage();
  await page.setViewportSize({ width: 640, height: 640 });
  const source = `data:image/png;base64,${Buffer.from(png).toString('base64')}`;
  await page.setContent(
    `<body style="margin:0;height:100vh;display:grid;place-items:center;background:#665">
     <img src="${source}" style="filter:blur(${blurPx}px) brightness(0.8) contrast(0.7);
     transform:perspective(1200px) rotateX(12deg) rotate(${turnedDeg}deg)">`,
  );
  await page.locator('img').evaluate((image: HTMLImageElement) => image.decode());
  const taken = Uint8Array.from(await page.screenshot());
  await page.close();
  return taken;
}

it.each(THEMES)('is black on white, and read, on a phone in the %s theme', async (theme) => {
  await open('#kit/share/shot');
  await app.page.evaluate((name) => {
    document.documentElement.dataset.theme = name;
  }, theme);
  const shown = await picture();
  expect(await readCodes(shown)).toEqual([await address()]);
  const box = await code().boundingBox();
  expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThan(340);
  expect(box?.width).toBeCloseTo(box?.height ?? 0, 0);
});

it('is read in colours that the person has forced on all pages', async () => {
  await open('#kit/share/shot');
  await app.page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  expect(await readCodes(await picture())).toEqual([await address()]);
});

it.each([
  { turnedDeg: 0, blurPx: 1.5 },
  { turnedDeg: 7, blurPx: 1.2 },
  { turnedDeg: -31, blurPx: 1 },
])(
  'is read with the whole kit in it, turned by $turnedDeg° and blurred by $blurPx px',
  async (hand) => {
    await open('#kit/share/shot');
    await tapButton(app.page, 'With the kit in play');
    expect(await readCodes(await asTaken(await picture(), hand))).toEqual([await address()]);
  },
);

/** A position of so many balls that its link is as long as a code takes. */
function longestLink(): string {
  const { position } = SAID_IN_VERSION_1;
  if (position === null) throw new Error('no position');
  const balls = Array.from({ length: 16 }, (_, at) => ({
    name: (at || 'cue') as BallName,
    xM: -0.5 + at * 0.0651234567,
    yM: -1 + at * 0.1234567891,
  }));
  const named = (length: number) =>
    writeLink({ position: { ...position, balls, name: '八'.repeat(length) } });
  let length = 1;
  while (linkBytes(named(length + 1)) <= MOST_BYTES) length += 1;
  return named(length);
}

it('is read at its finest, and a little more of data is offered as a file', async () => {
  const longest = longestLink();
  expect(linkBytes(longest)).toBeGreaterThan(MOST_BYTES - 4);
  await open(`#kit/link/${longest}`);
  const { page } = app;
  await tapButton(page, 'Keep it');
  await page.getByText('The position is kept').waitFor();
  await tapButton(page, 'The position on Choose');
  const taken = await asTaken(await picture(), { turnedDeg: 7, blurPx: 0.8 });
  expect(await readCodes(taken)).toEqual([await address()]);
  await tapButton(page, 'With the kit in play');
  const coming = page.waitForEvent('download');
  await tapButton(page, 'Save as a file');
  expect((await coming).suggestedFilename()).toBe('leeway-link.txt');
  expect(await code().count()).toBe(0);
});
