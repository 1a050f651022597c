import type { Page } from 'playwright-core';
import { bringIn, inventedBackup, pickBackup } from '../harness/backup-at-hand';
import { openApp } from '../harness/open-app';
import { median } from '../harness/quantile';
import { manyContents } from '../store/backup/many-contents';
import type { BenchLine } from './bench-line';

/** Of cues, shots of trials and positions each. */
const ROWS = 3000;
const ROUNDS = 5;

/** What the page's own thread works from an address to what is wanted there, ms: not the clock's. */
async function threadMs(page: Page, address: string, wanted: string): Promise<number> {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const worked = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
  };
  const before = await worked();
  await page.goto(address);
  await page.locator(wanted).first().waitFor();
  const after = await worked();
  await cdp.detach();
  return after - before;
}

/** The work of a start, and of showing the cues, with thousands of rows over that with next to none. */
export async function manyRowsBench(): Promise<readonly BenchLine[]> {
  const [full, empty] = [await openApp({ hash: '#kit/backup' }), await openApp()];
  const works: {
    readonly start: readonly [number, number];
    readonly list: readonly [number, number];
  }[] = [];
  try {
    full.page.setDefaultTimeout(600_000);
    await pickBackup(full.page, await inventedBackup(manyContents(ROWS)));
    await bringIn(full.page);
    const start = async ({ page, server }: typeof full) => {
      await page.goto('about:blank');
      return await threadMs(page, `${server.url}#shot`, '.answer');
    };
    const list = ({ page, server }: typeof full) =>
      threadMs(page, `${server.url}#kit/cues`, '.record-list');
    for (let round = 0; round < ROUNDS; round++) {
      const starts = [await start(full), await start(empty)] as const;
      works.push({ start: starts, list: [await list(full), await list(empty)] });
    }
  } finally {
    await full.close();
    await empty.close();
  }
  const ratio = (of: 'start' | 'list') =>
    median(works.map((work) => work[of][0])) / median(works.map((work) => work[of][1]));
  return [
    { name: `a start with ${3 * ROWS} rows over one with none`, value: ratio('start'), unit: '×' },
    { name: `the list of ${ROWS} cues over one of five`, value: ratio('list'), unit: '×' },
  ];
}
