import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { faultsOfWords } from '../harness/drawn-words';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { withLargeText } from '../harness/reader-styles';
import { SIZES } from '../harness/screens';
import { tapButton } from '../harness/thumb';
import { untilCompared } from '../harness/touch-table';

const TABS = ['choose', 'choose/play', 'choose/zone', 'choose/ways'] as const;

/** A new position each, on one page. */
let app: OpenApp;
beforeAll(async () => {
  app = await openApp({ hash: '#choose' });
});
afterAll(() => app.close());

async function show(screen: string): Promise<void> {
  await app.page.goto(`${app.server.url}#${screen}`);
  await untilRendered(app.page);
  await settle(app.page);
}

const boxOf = (selector: string) => app.page.locator(selector).boundingBox();
const table = async () => ({
  room: await boxOf('.table-board'),
  drawn: await boxOf('.table-board .board-bed'),
});

describe.each(SIZES)('the table of Choose, $width by $height', (size) => {
  beforeAll(() => app.page.setViewportSize(size));

  const onEveryTab = async () => {
    const seen: unknown[] = [];
    for (const tab of TABS) {
      await show(tab);
      seen.push(await table());
    }
    return seen;
  };

  it('keeps its place and size on every tab while nothing is laid', async () => {
    await show('choose/positions');
    await tapButton(app.page, 'New position');
    const [first, ...others] = await onEveryTab();
    expect((first as Awaited<ReturnType<typeof table>>).drawn?.width).toBeGreaterThan(100);
    expect(others).toEqual(others.map(() => first));
  });

  it('keeps them before a comparison, while it runs, after it, and over a way', async () => {
    await show('choose/positions');
    await app.page.locator('.record-choose', { hasText: 'Straight, and stop' }).first().tap();
    const seen = await onEveryTab();
    await untilCompared(app.page);
    seen.push(...(await onEveryTab()));
    await app.page.locator('.way-row').first().tap();
    await app.page.locator('.fan-path').first().waitFor();
    await settle(app.page);
    seen.push(await table());
    expect(seen).toEqual(seen.map(() => seen[0]));
    await tapButton(app.page, /All ways/);
  });

  it('shows a whole way and the next above the fold, and all pockets clear of what leads on', async () => {
    await show('choose/ways');
    await untilCompared(app.page);
    const foot = (await boxOf('.nav-bar'))?.y ?? 0;
    const [first, second] = await app.page
      .locator('.way-row')
      .evaluateAll((rows) => rows.map((row) => row.getBoundingClientRect().toJSON() as DOMRect));
    expect(first?.bottom).toBeLessThan(foot);
    expect(second?.top).toBeLessThan(foot - 20);
    await show('choose/play');
    const lead = (await boxOf('.sheet-foot .button'))?.y ?? 0;
    const pockets = await app.page
      .locator('.pocket-button')
      .evaluateAll((buttons) => buttons.map((one) => one.getBoundingClientRect().bottom));
    expect(pockets).toHaveLength(6);
    expect(Math.max(...pockets)).toBeLessThanOrEqual(lead);
  });

  it('has all of it on the screen, and the sheet beside or below it', async () => {
    await show('choose/play');
    const room = await boxOf('.table-board');
    const sheet = await boxOf('.choose-sheet');
    if (!room || !sheet) throw new Error('there is a table and a sheet');
    expect(room.y).toBeGreaterThanOrEqual(0);
    expect(room.y + room.height).toBeLessThanOrEqual(size.height);
    const isBelow = sheet.y >= room.y + room.height;
    const isBeside = sheet.x >= room.x + room.width;
    expect(isBelow || isBeside).toBe(true);
    const most = Math.max(room.x + room.width, sheet.x + sheet.width);
    expect(most - Math.min(room.x, sheet.x)).toBeGreaterThanOrEqual(size.width - 24);
    expect(sheet.height).toBeGreaterThan(size.height / 4);
  });
});

describe.each([320, 360, 390, 430])('the words on the table, %i wide', (width) => {
  beforeAll(() => app.page.setViewportSize({ width, height: 780 }));

  it.each(['choose/play', 'choose/zone', 'choose/ways'])(
    'of %s lie on no other and on no ball, with text as usual and twice as large',
    async (screen) => {
      await show(screen);
      await app.page.locator('.board-ball').first().waitFor();
      expect(await faultsOfWords(app.page)).toEqual([]);
      await withLargeText(app.page, async () => {
        await settle(app.page);
        expect(await faultsOfWords(app.page)).toEqual([]);
      });
    },
  );
});
