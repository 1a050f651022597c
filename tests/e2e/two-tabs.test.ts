import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { SavedPosition } from '../../src/store/saved-position';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { readRawDatabase } from '../harness/raw-database';
import { openEngineNumbers, tapAction, tapButton } from '../harness/thumb';

let app: OpenApp;
let one: Page;
let other: Page;
beforeEach(async () => {
  app = await openApp({ hash: '#kit', hasWorkers: false });
  await app.context.addInitScript(() => {
    const { postMessage } = BroadcastChannel.prototype;
    BroadcastChannel.prototype.postMessage = function (message) {
      const tell = () => postMessage.call(this, message);
      if (Reflect.get(window, 'areNewsLate')) window.addEventListener('news-arrive', tell);
      else tell();
    };
  });
  [one, other] = [app.page, await app.context.newPage()];
});
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

async function bothTo(hash: string): Promise<void> {
  for (const page of [one, other]) {
    await page.goto('about:blank');
    await page.goto(`${app.server.url}${hash}`);
    await untilRendered(page);
  }
}

const figure = (page: Page, name: string) => page.getByRole('textbox', { name });
const news = async (page: Page) => (await page.locator('.news-bar').textContent()) ?? '';
const names = (page: Page) => page.locator('.record-choose b').allInnerTexts();

/** A row as the database itself holds it. */
async function kept(store: string, id: string) {
  const { stores } = await readRawDatabase(one);
  return stores[store]?.find((row) => row.id === id);
}

describe('two tabs at one cue', () => {
  const HOUSE = '#kit/cues/demo-cue-house';
  const RATIO = 'Ball over end mass';
  const TIP = 'Tip diameter, mm';

  it('show and keep what either changes', async () => {
    await bothTo(HOUSE);
    for (const page of [one, other]) await openEngineNumbers(page);
    await figure(one, RATIO).fill('31');
    await figure(other, TIP).fill('12.5');
    for (const page of [one, other]) {
      await expect.poll(() => figure(page, RATIO).inputValue()).toBe('31');
      await expect.poll(() => figure(page, TIP).inputValue()).toBe('12.5');
      expect(await news(page)).toBe('');
    }
    const row = { massRatio: 31, tipDiameterM: 0.0125 };
    expect(await kept('cues', 'demo-cue-house')).toMatchObject(row);
  });

  it('keep both of one number, though they hear of each other late', async () => {
    await bothTo(HOUSE);
    for (const page of [one, other]) await openEngineNumbers(page);
    await one.evaluate(() => Reflect.set(window, 'areNewsLate', true));
    await figure(one, RATIO).fill('31');
    await expect.poll(() => kept('cues', 'demo-cue-house')).toMatchObject({ massRatio: 31 });
    await figure(other, RATIO).fill('17');
    await expect
      .poll(() => news(other))
      .toContain('This tab’s stands; the other’s is kept as House cue (other tab).');
    await one.evaluate(() => window.dispatchEvent(new Event('news-arrive')));
    await one.getByRole('textbox', { name: 'Name' }).focus();
    await expect.poll(() => figure(one, RATIO).inputValue()).toBe('17');
    expect(await news(one)).toBe('');
    await tapButton(other, 'OK');
    await expect.poll(() => news(other)).toBe('');
    await bothTo('#kit/cues');
    for (const page of [one, other]) {
      expect(await names(page)).toEqual(
        expect.arrayContaining(['House cue', 'House cue (other tab)']),
      );
    }
  });

  it('ask where one changes what the other has deleted', async () => {
    await bothTo('#kit/cues');
    await tapAction(other, 'Numbers of', 'House cue');
    await openEngineNumbers(other);
    await tapAction(one, 'Delete', 'House cue');
    await other.getByText('It was deleted in another tab.').waitFor();
    await figure(other, RATIO).fill('31');
    await expect.poll(() => news(other)).toContain('House cue was deleted in another tab.');
    expect(await names(one)).not.toContain('House cue');
    await tapButton(other, 'Bring it back');
    await expect.poll(() => names(one)).toContain('House cue');
    await expect.poll(() => news(other)).toBe('');
    expect(await kept('cues', 'demo-cue-house')).toMatchObject({ massRatio: 31 });
    await tapAction(one, 'Delete', 'House cue');
    await figure(other, RATIO).fill('29');
    await tapButton(other, 'Let it go');
    await expect.poll(() => news(other)).toBe('');
    expect(await kept('cues', 'demo-cue-house')).toBeUndefined();
    expect(await names(one)).not.toContain('House cue');
  });
});

it('two tabs at one position move other balls, and each takes back its own', async () => {
  await bothTo('#choose');
  const placesKept = async () => {
    const { stores } = await readRawDatabase(one);
    const rows = stores.positions as readonly SavedPosition[] | undefined;
    return new Map(
      rows?.flatMap(({ id, balls }) =>
        balls.map(({ name, xM, yM }) => [`${id} ${name}`, `${xM} ${yM}`] as const),
      ),
    );
  };
  const before = await placesKept();
  /** The names of the balls that lie elsewhere than at first. */
  const moved = async () => {
    const changed = [...(await placesKept())].filter(([key, place]) => before.get(key) !== place);
    return changed.map(([key]) => key.split(' ')[1]);
  };
  const laid = one.locator('.palette-ball.is-laid');
  const [first = '', second = ''] = await laid.allInnerTexts();
  const nudge = async (page: Page, name: string) => {
    await page
      .locator('.palette-ball.is-laid')
      .filter({ hasText: new RegExp(`^${name}$`) })
      .tap();
    await tapButton(page, /^Move .* up$/);
  };
  await nudge(one, first);
  await nudge(other, second);
  await expect.poll(async () => (await moved()).sort()).toEqual([first, second].sort());
  await tapButton(one, 'Undo');
  await expect.poll(moved).toEqual([second]);
  await tapButton(other, 'Undo');
  await expect.poll(moved).toEqual([]);
  for (const page of [one, other]) {
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    expect(await news(page)).toBe('');
  }
});
