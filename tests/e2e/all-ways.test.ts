import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { accessFaults } from '../harness/access-faults';
import {
  layHidden,
  lookAtAll,
  rowOf,
  unfold,
  untilAllLooked,
  untilFirstWays,
} from '../harness/all-ways-at-hand';
import { type OpenApp, openApp } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { tap, tapButton } from '../harness/thumb';

/** One position is laid and looked at once for all; what follows reads what came of it. */
let app: OpenApp;
beforeAll(async () => {
  app = await openApp({ hash: '#choose' });
});
afterAll(() => app.close());

const text = async (css: string) => (await app.page.locator(css).first().textContent()) ?? '';
const rows = () => app.page.locator('.all-way-row');
const keys = () => rows().evaluateAll((all) => all.map((row) => row.getAttribute('data-way')));
const chip = (name: string) => app.page.getByRole('button', { name: new RegExp(`^${name}`) });

describe('a position whose direct way is closed', () => {
  it('is laid, and says so of the pocket, not of the position', async () => {
    const { page } = app;
    await layHidden(page);
    await tapButton(page, 'Play');
    await tapButton(page, '3 ball');
    await tapButton(page, /^Into the near left pocket/);
    expect(await text('.status-line p')).toMatch(/no direct shot sends it that way/);
    await tapButton(page, 'See all ways to play it');
    await untilAllLooked(page);
    expect(await rows().count()).toBeGreaterThan(0);
    expect(await text('.status-line p')).toContain('The 3 into the near left pocket.');
    const told = await rows().allTextContents();
    expect(
      told.filter(
        (row) => !/The 3 into the near left, (bank|kick|combination|carom) |Safety, /.test(row),
      ),
    ).toEqual([]);
    await tap(page, chip('Cuts'));
    expect(await text('.no-ways')).toMatch(/^No direct cut goes: /);
  });

  it('is looked at as a whole, stopped, and looked at to the end', async () => {
    const { page } = app;
    await tapButton(page, 'Play');
    await tapButton(page, 'Any ball');
    await tapButton(page, 'Any pocket');
    await tapButton(page, 'Ways');
    await tap(page, chip('All'));
    await expect.poll(() => text('.status-line p')).toBe('Any ball into any pocket.');
    await untilFirstWays(page);
    const first = await keys();
    await tapButton(page, 'Stop');
    expect(await text('.compare-note')).toMatch(/^Stopped early: \d+ ways so far\.$/);
    expect((await keys()).slice(0, first.length)).toEqual(first);
    await tapButton(page, 'Look again');
    await lookAtAll(page);
    await untilAllLooked(page);
    expect(await text('.compare-note')).toMatch(/^(\d+ of )?\d+ ways( found)?, wisest first\.$/);
  });

  it('has ways of every kind', async () => {
    const labels = await app.page.locator('.kind-chip').allTextContents();
    const counts = labels.map((label) => label.replace(/(?<=[a-z])[1-9].*$/, ' some'));
    const kinds = ['All', 'Cuts', 'Banks', 'Kicks', 'Combos', 'Caroms', 'Safety'];
    expect(counts, labels.join()).toEqual(kinds.map((kind) => `${kind} some`));
  });

  it('lists one kind at a time, as many as its button says', async () => {
    for (const kind of ['Cuts', 'Banks', 'Kicks', 'Combos', 'Caroms', 'Safety']) {
      const label = (await chip(kind).textContent()) ?? '';
      await tap(app.page, chip(kind));
      await unfold(app.page);
      await expect.poll(() => rows().count()).toBe(Number(/\d+/.exec(label)?.[0]));
    }
    await tap(app.page, chip('All'));
    expect(await accessFaults(app.page)).toEqual([]);
  });
});

describe('the order of the list', () => {
  it('is by worth, and by how often each goes at a tap, with nothing looked for anew', async () => {
    const { page } = app;
    await unfold(page, false);
    const few = await keys();
    await unfold(page);
    const byWorth = await keys();
    await tapButton(page, 'Likeliest first');
    await expect.poll(() => text('.compare-note')).toMatch(/likeliest first\.$/);
    expect(await page.locator('.all-way-row').first().textContent()).not.toContain('Safety');
    await unfold(page);
    expect([...(await keys())].sort()).toEqual([...byWorth].sort());
    await tapButton(page, 'Wisest first');
    await expect.poll(keys).toEqual(byWorth);
    await unfold(page, false);
    await expect.poll(keys).toEqual(few);
  });
});

describe('a safety', () => {
  it('opens with where both balls stop, and as the cue is laid', async () => {
    const { page } = app;
    await tap(page, rowOf(page, 'Safety'));
    await page.locator('.struck-spread path').waitFor();
    expect(await page.locator('.fan-spread').count()).toBe(2);
    expect(await page.locator('.fan-lines li').allTextContents()).toEqual([
      expect.stringMatching(/^A The cue ball: [\d.]+ along, /),
      expect.stringMatching(/^The (3|12): [\d.]+ along, /),
    ]);
    const why = await page.locator('.way-why').allTextContents();
    expect(why.at(-1)).toMatch(
      /^When the turn passes to them, their best shot is (easy|fair|hard), /,
    );
    expect(await accessFaults(page)).toEqual([]);
    await tapButton(page, 'Aim it');
    await page.locator('.board-aim').waitFor();
    expect(await text('.aim-point')).toMatch(/^Point the cue at the /);
    await tapButton(page, /How it plays/);
    await tapButton(page, /All ways/);
  });
});

describe.each(['bank', 'kick', 'combination', 'carom'])('a %s', (kind) => {
  it('opens on the board, and as the cue is laid, by touch', async () => {
    const { page } = app;
    await tap(page, rowOf(page, kind));
    expect(await page.locator('.fan-path').count()).toBe(5);
    expect(await page.locator('.ball-path.is-falling').count()).toBe(1);
    await tapButton(page, 'Aim it');
    await page.locator('.board-aim').waitFor();
    expect(await text('.aim-point')).toMatch(
      /^Point the cue at the (near|far|left|right) rail’s nose, .*diamonds? from the (near|far) (left|right) corner\.$|^Point the cue at the .* (corner|pocket)\.$/,
    );
    expect(await text('#way-sentence')).toContain('Point the cue at');
    await tapButton(page, /How it plays/);
    await tapButton(page, /All ways/);
  });
});

it('fills Shot in from a direct cut among them', async () => {
  const { page } = app;
  await tap(page, rowOf(page, /, (cut \d+°|straight in)\./));
  const speed = /([\d.]+) m\/s/.exec(await text('.way-stroke'))?.[1];
  await tapButton(page, 'Aim it');
  await page.locator('.shot-place').waitFor();
  await settle(page);
  expect(await text('[data-opens="speed"]')).toContain(Number(speed).toFixed(1).replace(/0$/, ''));
  await page.goBack();
  await tapButton(page, /All ways/);
});

it('opens a way and lays the cue by keys alone, and reads so that all can be read', async () => {
  const { page } = app;
  await rowOf(page, 'bank').focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('chosen-way');
  expect(await accessFaults(app.page)).toEqual([]);
  for (let i = 0; i < 20; i++) {
    const name = await page.evaluate(() => document.activeElement?.textContent ?? '');
    if (name === 'Aim it') break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
  await page.locator('.board-aim').waitFor();
  expect(await accessFaults(app.page)).toEqual([]);
  await page.keyboard.press('Escape');
  await page.locator('.fan-path').first().waitFor();
});
