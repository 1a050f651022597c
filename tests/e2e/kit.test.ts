import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { readAnswer, settle } from '../harness/read-shot';
import { openEngineNumbers, tap, tapAction, tapButton } from '../harness/thumb';
import { untilDeskKept } from '../harness/until-kept';

let app: OpenApp;
const open = async () => {
  app = await openApp({ hasWorkers: false });
};
const close = async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
};

const text = async (selector: string) =>
  (await app.page.locator(selector).first().textContent()) ?? '';
const toCues = async () => {
  await tap(app.page, app.page.getByRole('link', { name: 'Kit' }));
  await tap(app.page, app.page.locator('[data-opens="cues"]'));
};

describe('the kit', () => {
  beforeEach(open);
  afterEach(close);

  it('says that everything in it is a default, on both places', async () => {
    expect(await text('.kit-strip')).toContain('Not your cue yet.');
    await tap(app.page, app.page.locator('.kit-strip-names'));
    expect(await text('.place-note')).toContain('default');
    for (const row of await app.page
      .locator('.shelf-row:has(.shelf-label):has(.shelf-origin)')
      .allInnerTexts()) {
      expect(row).toContain('an invented example');
    }
  });

  it.each([
    { width: 768, height: 1024 },
    { width: 844, height: 390 },
  ])('stands beside what is open of it, $width by $height', async (size) => {
    const { page } = app;
    const list = page.getByRole('region', { name: 'All of the kit' });
    await toCues();
    expect(await list.count()).toBe(0);
    await page.setViewportSize(size);
    await list.waitFor();
    expect(await list.locator('[aria-current]').textContent()).toContain('House cue');
    await tap(page, list.locator('[data-opens="balls"]'));
    await expect.poll(() => text('.panel-header h1')).toBe('Balls');
    const [aside, shown] = await Promise.all(
      ['.kit-beside', '.kit-page'].map((selector) => page.locator(selector).boundingBox()),
    );
    expect(aside && aside.x + aside.width).toBeLessThanOrEqual(shown?.x ?? Number.NaN);
    await tap(page, page.locator('.panel-header .button'));
    await expect.poll(() => list.count()).toBe(0);
  });

  it('changes the answer when another cue is chosen, and keeps the choice', async () => {
    const { page } = app;
    const before = await readAnswer(page);
    await toCues();
    await tapButton(page, /^Very low-squirt/);
    await tap(page, page.getByRole('link', { name: 'Shot' }));
    expect(await text('.kit-strip')).toContain('Very low-squirt cue');
    const after = await readAnswer(page);
    expect(after).not.toEqual(before);
    await untilDeskKept(page, { choice: { cues: 'demo-cue-very-low' } });
    await page.reload();
    await untilRendered(page);
    expect(await readAnswer(page)).toEqual(after);
  });

  it('takes a copy with one’s own numbers, and is then no default', async () => {
    const { page } = app;
    await toCues();
    const squirt = () => text('.record-row.is-chosen .record-figure');
    const before = await squirt();
    await tapAction(page, 'Copy', 'House cue');
    await openEngineNumbers(page);
    const ratio = page.getByRole('textbox', { name: /^Ball over end mass/ });
    await ratio.fill('40');
    await ratio.blur();
    await tapButton(page, 'Ball over end mass: more');
    await expect.poll(() => ratio.inputValue()).toBe('41');
    await page.getByRole('textbox', { name: 'Name' }).fill('My cue');
    await page.getByRole('textbox', { name: 'Name' }).blur();
    await tapButton(page, 'Play with this one');
    await expect.poll(() => text('.place-note')).toContain('yours');
    await tapButton(page, /Back/);
    await expect.poll(squirt).toMatch(/^\d+ mm squirt$/);
    expect(await squirt()).not.toBe(before);
    await tap(page, page.getByRole('link', { name: 'Shot' }));
    expect(await text('.kit-strip')).toContain('My cue');
    expect(await text('.kit-strip')).not.toContain('Defaults');
  });

  it('says what is wrong with a number and keeps the last good one', async () => {
    const { page } = app;
    await toCues();
    await tapAction(page, 'Numbers of', 'House cue');
    const tip = page.getByRole('textbox', { name: 'Tip diameter, mm' });
    await tip.fill('60');
    await settle(page);
    expect(await text('.record-number .field-problem')).toContain('15 mm');
    expect(await tip.getAttribute('aria-invalid')).toBe('true');
    await tapButton(page, 'Tip diameter: less');
    await expect.poll(() => tip.inputValue()).toBe('12.9');
  });

  it('deletes, and puts back', async () => {
    const { page } = app;
    await toCues();
    await tapAction(page, 'Delete', 'House cue');
    const names = page.locator('.record-choose b');
    expect(await names.allInnerTexts()).not.toContain('House cue');
    await tapButton(page, /Put it back/);
    expect(await names.allInnerTexts()).toContain('House cue');
    await expect.poll(() => text('[aria-pressed="true"]')).toContain('House cue');
  });

  it('keeps one of each kind', async () => {
    const { page } = app;
    await toCues();
    for (const name of ['Stiff', 'House', 'Low-squirt']) {
      await tapAction(page, 'Delete', `${name} cue`);
    }
    await tapAction(page, 'Delete', 'Very low-squirt cue');
    expect(await page.locator('.record-choose').count()).toBe(1);
    await expect.poll(() => text('.place-problem')).not.toBe('');
  });
});

describe('the way between places', () => {
  beforeAll(open);
  afterAll(close);

  it('is walked back by the back button, panel by panel', async () => {
    const { page } = app;
    await toCues();
    await tapAction(page, 'Numbers of', 'House cue');
    await page.goBack();
    await expect.poll(() => text('h1')).toBe('Cue');
    await page.goBack();
    await expect.poll(() => text('h1')).toBe('Kit');
    await page.goBack();
    await page.locator('.shooter-diagram').waitFor();
  });

  it('opens a panel from its address', async () => {
    const { page } = app;
    await page.goto(`${app.server.url}#shot/why`);
    await page.reload();
    await untilRendered(page);
    expect(await text('#why-heading')).toBe('Why this aim');
    await tapButton(page, 'Done');
    await page.locator('.input-tiles').waitFor();
    expect(page.url()).toMatch(/#shot$/);
  });

  it('tells in About that many leagues forbid a phone', async () => {
    const { page } = app;
    await tap(page, page.getByRole('link', { name: 'Kit' }));
    await tapButton(page, 'About');
    expect(await text('.about-text')).toContain('leagues forbid a phone during a match');
  });
});

describe('where nothing can be kept', () => {
  beforeAll(open);
  afterAll(close);

  it('says so and works all the same', async () => {
    const { page } = app;
    await page.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', { value: undefined });
    });
    await page.reload();
    await untilRendered(page);
    await expect.poll(() => text('.news-bar')).toContain('nothing outlives this visit');
    expect((await readAnswer(page)).ghost).toMatch(/^\d+ mm/);
  });
});
