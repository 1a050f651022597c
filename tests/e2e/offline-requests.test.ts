import { afterEach, beforeEach, expect, it } from 'vitest';
import { type OpenApp, openApp, untilOfflineReady, untilRendered } from '../harness/open-app';
import { settle } from '../harness/read-shot';
import { SCREENS } from '../harness/screens';
import { watchPolicy } from '../harness/watch-policy';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp({ isStored: true });
});
afterEach(() => app.close());

it('asks nothing of any other host on any screen, and breaks no rule of its own policy', async () => {
  const requests: string[] = [];
  app.context.on('request', (request) => requests.push(request.url()));
  await untilOfflineReady(app.page);
  await app.page.reload();
  await untilRendered(app.page);
  expect(requests.length).toBeGreaterThan(0);
  const broken = await watchPolicy(app.page);
  for (const screen of SCREENS) {
    await app.page.evaluate((hash) => {
      location.hash = hash;
    }, screen);
    await settle(app.page);
  }
  expect(await broken()).toEqual([]);
  expect(app.guard.problems).toEqual([]);
});
