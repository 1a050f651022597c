import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type OpenApp, openApp, untilOfflineReady, untilRendered } from '../harness/open-app';
import { type StaticServer, startStaticServer } from '../harness/static-server';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp();
});
afterEach(() => app.close());

it('asks nothing of any other host, and the console stays free of errors', async () => {
  const requests: string[] = [];
  app.context.on('request', (request) => requests.push(request.url()));
  await untilOfflineReady(app.page);
  await app.page.reload();
  await untilRendered(app.page);
  expect(requests.length).toBeGreaterThan(0);
  expect(app.guard.problems).toEqual([]);
});

describe('were the app to try, it', () => {
  let elsewhere: StaticServer;
  beforeEach(async () => {
    elsewhere = await startStaticServer({ folder: 'dist' });
  });
  afterEach(() => elsewhere.stop());

  it('could not fetch from elsewhere, nor from its own host', async () => {
    const outcomes = await app.page.evaluate(
      (urls) =>
        Promise.all(
          urls.map((url) =>
            fetch(url).then(
              () => 'sent',
              () => 'refused',
            ),
          ),
        ),
      [elsewhere.url, app.server.url],
    );
    expect(outcomes).toEqual(['refused', 'refused']);
    expect(elsewhere.requests).toEqual([]);
  });

  it.each(['img', 'script', 'iframe'])('could not bring in an %s', async (tag) => {
    await app.page.evaluate(
      ([name, url]) =>
        new Promise<void>((resolve) => {
          const element = document.createElement(name as 'img');
          document.addEventListener('securitypolicyviolation', () => resolve(), { once: true });
          element.src = url as string;
          document.body.append(element);
        }),
      [tag, `${elsewhere.url}icons/icon-192.png`],
    );
    expect(elsewhere.requests).toEqual([]);
    expect(app.guard.problems.join('\n')).toContain('Content Security Policy');
  });
});
