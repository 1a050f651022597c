import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenApp, openApp, untilFetched, untilRendered } from '../harness/open-app';

let app: OpenApp;
beforeAll(async () => {
  app = await openApp();
});
afterAll(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

/** Opens an address as a phone does that comes back to it. */
async function startAt(hash: string): Promise<Page> {
  const { page, server } = app;
  await page.goto(server.url + hash);
  await page.reload();
  await untilRendered(page);
  return page;
}

/** The classes of what has been drawn elsewhere since the start without being asked to. */
const jumped = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<string[]>((told) => {
        const found: string[] = [];
        const watch = new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) {
            const sources: { node: Element | null }[] = Reflect.get(entry, 'sources');
            found.push(...sources.map(({ node }) => node?.getAttribute?.('class') ?? 'text'));
          }
        });
        watch.observe({ type: 'layout-shift', buffered: true });
        // Of two frames the second comes after what the observer was already owed.
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => told(found))));
      }),
  );

it.each(['#shot', '#choose', '#kit', '#log'])('opens %s where it stays', async (hash) => {
  const page = await startAt(hash);
  await untilFetched(page);
  expect(await jumped(page)).toEqual([]);
});

it('explains an aim without moving what is above, however late the rest of it comes', async () => {
  const page = await startAt('#shot/why');
  await page.locator('.why-room').waitFor();
  await untilFetched(page);
  expect((await jumped(page)).filter((name) => name !== 'why-fold')).toEqual([]);
});
