import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { answerLine } from '../../src/headless/answer-line';
import { DEFAULT_CHOICE } from '../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { kitOf } from '../../src/store/kit-of';
import { readPngHeader } from '../build/png-header';
import { runAxe } from '../harness/axe';
import { faultsAtAllSizes } from '../harness/layout-faults';
import { type OpenApp, openApp } from '../harness/open-app';
import { asPrinted, readPdf } from '../harness/read-pdf';
import { THEMES } from '../harness/screens';
import { tapButton } from '../harness/thumb';

let app: OpenApp;
async function open(hash: string): Promise<Page> {
  app = await openApp({ hasWorkers: false, hash });
  await app.page.locator('.card-side').first().waitFor();
  return app.page;
}
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

/** What stands on each side, a text an entry. */
const sidesOf = (page: Page) =>
  page
    .locator('.card-side')
    .evaluateAll((sides) =>
      sides.map((side) => [...side.querySelectorAll('text')].map((text) => text.textContent ?? '')),
    );

/** Prints it, and holds that to what is on the screen: its texts, nothing beside them, and its size. */
async function printed(page: Page) {
  const pages = readPdf(await page.pdf({ preferCSSPageSize: true }));
  const sides = await sidesOf(page);
  expect(pages.map(({ text }) => text)).toEqual(sides.map((texts) => asPrinted(texts.join(''))));
  for (const { widthMm, heightMm } of pages) {
    // A6, in whole pixels of the screen.
    expect(Math.abs(widthMm - 105)).toBeLessThan(0.3);
    expect(Math.abs(heightMm - 148)).toBeLessThan(0.3);
  }
  return pages;
}

/** What reaches beyond the clear edge of its side when printed, and colours that are not black or white. */
async function faultsOnPaper(page: Page): Promise<readonly string[]> {
  await page.emulateMedia({ media: 'print' });
  const faults = await page.evaluate(() => {
    const edgePx = (5 * 96) / 25.4;
    return [...document.querySelectorAll('.card-side')].flatMap((side) => {
      const paper = side.getBoundingClientRect();
      return [...side.querySelectorAll<SVGGraphicsElement>('text, path, circle')].flatMap(
        (part) => {
          const { left, right, top, bottom, width } = part.getBoundingClientRect();
          if (width === 0) return [];
          const isWithin =
            left >= paper.left + edgePx &&
            right <= paper.right - edgePx &&
            top >= paper.top + edgePx &&
            bottom <= paper.bottom - edgePx;
          const { fill, stroke } = getComputedStyle(part);
          const isInk = [fill, stroke].every((ink) =>
            /^(none|rgb\((0, 0, 0|255, 255, 255)\))$/.test(ink),
          );
          return isWithin && isInk ? [] : [`${part.outerHTML} ${fill} ${stroke}`];
        },
      );
    });
  });
  await page.emulateMedia({ media: null });
  return faults;
}

const part = <S extends keyof typeof DEFAULT_CHOICE>(shelf: S) => {
  const found = DEMO_CATALOGUE[shelf].find(({ id }) => id === DEFAULT_CHOICE[shelf]);
  if (!found) throw new Error(`no ${shelf}`);
  return found;
};
const TABLE = part('tables');
const KIT = {
  ...kitOf(part('cues'), part('cloths'), part('balls'), TABLE),
  bedSlope: { alongM_per_M: 0, rightM_per_M: 0 },
};

const TIP = 0.013 / (KIT.ballRadiusM + KIT.tipRadiusM);
const SPEEDS = [0.75, 1.5, 2.5];

/** What the door says of a shot on it. */
function lookedUp(diamonds: number, asked: object) {
  const distanceM = (diamonds * TABLE.lengthM) / 8;
  const shot = { distanceM, cutDeg: 0, side: 0, height: 0, elevationDeg: 3, kit: KIT, ...asked };
  return JSON.parse(answerLine(JSON.stringify(shot), 1));
}

/** An aim that the door told, in ball widths. */
function inWidths(told: { ok: boolean; aimOnObjectBallM: number }): string {
  if (!told.ok) return '–';
  const widths = told.aimOnObjectBallM / (2 * KIT.ballRadiusM);
  const figure = Math.abs(widths).toFixed(2);
  return figure === '0.00' ? figure : `${figure}${widths < 0 ? '←' : '→'}`;
}

/** The cells of a row, by what stands before them. */
function rowOf(texts: readonly string[], first: string, cells: number): readonly string[] {
  const at = texts.findIndex((text) => text.replace('\u00a0', ' ') === first);
  return texts.slice(at + 1, at + 1 + cells);
}

describe('the card of a kit', () => {
  it('prints on two sides of A6, whole, in black on white', async () => {
    const page = await open('#kit/card');
    const [front, back, ...more] = await printed(page);
    expect(more).toEqual([]);
    expect(front?.text).toContain('INVENTEDEXAMPLEKIT');
    expect(front?.text).toContain(`${new Date().getFullYear()}.`);
    expect(back?.text).toContain('tearthecloth');
    expect(back?.text).toContain('Acardmaybeallowedwhereaphoneisnot');
    expect(await faultsOnPaper(page)).toEqual([]);
  });

  it('says of every aim, of throw and of how sure it is what the door does', async () => {
    const page = await open('#kit/card');
    const sides = await sidesOf(page);
    const rows = [
      ['0.32 m', 1],
      ['0.64 m', 2],
      ['1.27 m', 4],
      ['1.91 m', 6],
    ] as const;
    const tips = SPEEDS.flatMap((speedMps) => [TIP / 2, TIP].map((side) => ({ speedMps, side })));
    for (const [at, elevationDeg] of [3, 15].entries()) {
      const texts = sides[at] ?? [];
      for (const [first, diamonds] of rows) {
        const wanted = tips.map((tip) => inWidths(lookedUp(diamonds, { ...tip, elevationDeg })));
        expect(rowOf(texts, first, 6)).toEqual(wanted);
      }
      const sure = { speedMps: 1.5, side: TIP, elevationDeg, want: ['certainty'] };
      const { aimAngleDeg, aimOnObjectBallM, certainty } = lookedUp(4, sure);
      const moreDeg = aimAngleDeg + certainty.aimSdDeg;
      const reachM = TABLE.lengthM / 2 + 2 * KIT.ballRadiusM;
      const sdM = reachM * Math.tan((moreDeg * Math.PI) / 180) - aimOnObjectBallM;
      const told = Number(/Sure to ±([\d.]+)/.exec(texts.join(' '))?.[1]);
      expect(told).toBe(Number((sdM / (2 * KIT.ballRadiusM)).toFixed(2)));
    }
    for (const cutDeg of [15, 30, 45, 60]) {
      const thrown = SPEEDS.map((speedMps) => {
        const { objectBall, arrival } = lookedUp(2, { cutDeg, speedMps });
        const offDeg = objectBall.directionDeg - (arrival.directionDeg + arrival.cutDeg);
        return `${Math.abs(offDeg).toFixed(1)}°`;
      });
      expect(rowOf(sides[1] ?? [], `${cutDeg}°`, 3)).toEqual(thrown);
    }
  });

  it('holds what is ticked, in the unit that is asked for', async () => {
    const page = await open('#kit/card');
    await tapButton(page, 'mm');
    await expect.poll(async () => (await sidesOf(page)).join()).toContain('In millimetres');
    const { aimOnObjectBallM } = lookedUp(4, { side: TIP, speedMps: 2.5 });
    expect((await sidesOf(page))[0]).toContain(`${Math.round(aimOnObjectBallM * 1000)}→`);
    for (const gone of ['✓ Raised cue', '✓ Throw', '✓ Lag and run']) await tapButton(page, gone);
    const [front = [], back = []] = await sidesOf(page);
    expect(back.join(' ')).toBe('A card may be allowed where a phone is not: ask your league.');
    expect(front.join()).not.toContain('Lag');
    await printed(page);
  });

  it('is a picture for who has no printer', async () => {
    const page = await open('#kit/card');
    const { name, widthPx, shareOf } = await pictureTaken(page);
    expect(name).toBe('leeway-card.png');
    expect(widthPx).toBeGreaterThan(1000);
    // Most of it is paper, and a part is ink.
    expect(await shareOf([255, 255, 255])).toBeGreaterThan(0.7);
    expect(await shareOf([0, 0, 0])).toBeGreaterThan(0.01);
    await page.getByText('Saved as leeway-card.png').waitFor();
  });
});

/** Taps Picture, and takes the file apart. */
async function pictureTaken(page: Page) {
  const coming = page.waitForEvent('download');
  // Shot may still be at work, and what is under it move.
  await page.getByRole('button', { name: 'Picture', exact: true }).tap();
  const download = await coming;
  const png = await readFile(await download.path());
  return {
    name: download.suggestedFilename(),
    ...readPngHeader(png),
    /** The share of its pixels that have a colour. */
    shareOf: (colour: readonly number[]) =>
      page.evaluate(
        async ({ base64, colour }) => {
          const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
          const picture = await createImageBitmap(new Blob([bytes]));
          const ctx = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
          ctx?.drawImage(picture, 0, 0);
          const { data = [] } = ctx?.getImageData(0, 0, picture.width, picture.height) ?? {};
          let same = 0;
          for (let i = 0; i < data.length; i += 4) {
            if (colour.every((part, at) => data[i + at] === part)) same++;
          }
          return (4 * same) / data.length;
        },
        { base64: png.toString('base64'), colour },
      ),
  };
}

describe('a picture', () => {
  it.each([
    ['light', [189, 96, 0], [238, 240, 235]],
    ['dark', [255, 178, 36], [18, 22, 26]],
  ] as const)(
    'of a shot has the colours of the %s theme, and words',
    async (theme, aim, ground) => {
      app = await openApp({ hasWorkers: false, hash: '#shot/why' });
      const { page } = app;
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
        // What is written by hand is noted.
        const fillText = CanvasRenderingContext2D.prototype.fillText;
        CanvasRenderingContext2D.prototype.fillText = function (text, ...at) {
          document.body.dataset.drawn = `${document.body.dataset.drawn ?? ''}|${text}`;
          fillText.call(this, text, ...at);
        };
      }, theme);
      const { name, shareOf, widthPx, heightPx } = await pictureTaken(page);
      expect(name).toBe('leeway-shot.png');
      expect(heightPx).toBeGreaterThan(widthPx);
      expect(await shareOf(aim)).toBeGreaterThan(0.001);
      expect(await shareOf(ground)).toBeGreaterThan(0.5);
      const drawn = await page.evaluate(() => document.body.dataset.drawn);
      expect(drawn).toMatch(/edge of the object ball.*Cut 24° → right, 0.70 m.*ghost.*aim line/s);
    },
  );
});

describe('the card of a drill', () => {
  it('is made of a position, and prints on one side', async () => {
    const page = await open('#kit/drill/demo-position-2');
    const pages = await printed(page);
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toMatch(/The4intothefarleftpocket.*diamondsalong.*Tickabox/);
    expect(await faultsOnPaper(page)).toEqual([]);
  });
});

it('is reached, ticked and printed without a finger', async () => {
  app = await openApp({ hasWorkers: false, hash: '#kit' });
  const { page } = app;
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', 'yes');
  });
  const tabTo = async (name: string) => {
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    for (let i = 0; i < 40 && (await focused()) !== name; i++) await page.keyboard.press('Tab');
    expect(await focused()).toBe(name);
  };
  await tabTo('Card');
  await page.keyboard.press('Enter');
  await page.locator('.card-side').first().waitFor();
  await tabTo('✓ Throw');
  await page.keyboard.press('Space');
  await expect.poll(async () => (await sidesOf(page)).join()).not.toContain('Throw');
  await tabTo('Print');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.body.dataset.printed)).toBe('yes');
  await page.keyboard.press('Escape');
  await page.getByRole('heading', { name: 'Kit', exact: true }).waitFor();
});

describe.each(THEMES)('in the %s theme', (theme) => {
  it.each(['#kit/card', '#kit/drill/demo-position-2'])(
    'axe finds nothing on %s, and it fits',
    async (hash) => {
      const page = await open(hash);
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      expect((await runAxe(page)).found).toEqual([]);
      expect(await faultsAtAllSizes(page)).toEqual([]);
    },
  );
});
