import { rm } from 'node:fs/promises';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { WHOLE } from '../harness/campaign-size';
import { deriveAllNew } from '../harness/derive-version';
import { eventually, tapButton } from '../harness/engines/engine-thumb';
import { type EngineApp, openInEngine } from '../harness/engines/open-engine';
import { openWhole, spoilInstalls, spoilRevisits, spoilUpdates } from '../harness/spoiled-store';
import { type Chosen, everyFile, oneOfEachType } from '../harness/spoilings';

let older: string;
let newer: string;
let app: EngineApp;
beforeAll(async () => {
  older = await deriveAllNew('dist');
  newer = await deriveAllNew(older);
  app = await openInEngine('Firefox', { basePath: '/some/where/' });
});
afterAll(async () => {
  await app?.close();
  for (const folder of [older, newer]) await rm(folder, { recursive: true, force: true });
});

const TIMEOUT_MS = 600_000;
const CHOSEN: Chosen = WHOLE ? everyFile : oneOfEachType;

it(
  'Firefox keeps no login page for a file of any type, at a first visit, a later one or an update',
  async () => {
    const { page, server } = app;
    expect(await spoilInstalls(page, server, older, CHOSEN)).toEqual([]);
    await openWhole(page, server, older);
    expect(await spoilRevisits(page, server, older)).toEqual([]);
    await openWhole(page, server, older);
    expect(await spoilUpdates(page, server, { older, newer }, CHOSEN)).toEqual([]);
    await openWhole(page, server, older);
    await page.evaluate(() => {
      document.documentElement.dataset.marked = 'yes';
    });
    await tapButton(page, 'Update now');
    const isMarked = () => page.evaluate(() => document.documentElement.dataset.marked === 'yes');
    await eventually(() => isMarked().catch(() => true)).toBe(false);
    await openWhole(page, server, newer);
  },
  TIMEOUT_MS,
);
