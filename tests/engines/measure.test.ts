import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { squirtAngle } from '../../src/engine/impacts/strike';
import { ENGINES, type EnginePage } from '../harness/engines/engine-page';
import {
  eventually,
  settle,
  tap,
  tapButton,
  textOf,
  waitFor,
} from '../harness/engines/engine-thumb';
import { type EngineApp, openInEngine } from '../harness/engines/open-engine';
import { KIT_ON_TABLE, predictedTrial } from '../harness/predicted-trial';
import { untilKept } from '../harness/until-kept';

const MEASURED = /: ([\d.]+) ± ([\d.]+)° was assumed, ([\d.]+) ± ([\d.]+)° measured/;

describe.each(ENGINES)('measuring in %s', (engine) => {
  let app: EngineApp;
  let page: EnginePage;
  beforeAll(async () => {
    app = await openInEngine(engine, { hash: '#kit' });
    page = app.page;
  });
  afterAll(async () => {
    await app?.close();
  });
  const stepTitle = () => textOf(page, 'h1');
  const squirtLine = () => textOf(page, '.sureness-list li');

  /** Waits until the page says no more that it works out the readings. */
  const untilFitted = () => eventually(() => textOf(page, '.measure-status')).toBe('');

  /** Begins a line shot, and says which. */
  async function beginLine(): Promise<string> {
    await waitFor(page, { css: '.next-shot b' });
    await untilFitted();
    if ((await textOf(page, '.next-shot b')).startsWith('Line')) await tapButton(page, 'Play it');
    else await tap(page, { css: '.trial-row', name: /^Line/ });
    await waitFor(page, { css: '.attempt' });
    return page.evaluate(
      () => document.querySelector('.attempt')?.getAttribute('aria-label') ?? '',
    );
  }

  async function enterLanding(landingM = 0): Promise<void> {
    await eventually(stepTitle).toBe('Where did it touch?');
    for (const key of Math.abs(landingM * 100).toFixed(1)) await tapButton(page, key);
    await tapButton(page, landingM < 0 ? 'left' : 'right');
    await tapButton(page, 'Enter');
    await eventually(stepTitle).toBe('Taken down');
  }

  it('takes line shots down by taps, keeps one over a reload, and tells the cue’s squirt', async () => {
    await tap(page, { css: '[data-opens="measure"]' });
    const first = await beginLine();
    await tapButton(page, 'It is placed');
    await tapButton(page, 'Played');
    await eventually(stepTitle).toBe('Where did it touch?');
    await untilKept(page, 'attempts', { stepsDone: [expect.any(String), expect.any(String)] });
    await page.reload();
    await enterLanding(predictedTrial(first).readings.landingM);
    await waitFor(page, { css: 'p, li, output, b, div', name: /It counts\./ });
    await tapButton(page, 'To all trials');
    const second = await beginLine();
    await tapButton(page, 'It is placed');
    await tapButton(page, 'Played');
    await enterLanding(predictedTrial(second).readings.landingM);
    await tapButton(page, 'To all trials');
    await eventually(squirtLine).toMatch(MEASURED);
    await untilFitted();
    await settle(page);
    const [, assumed = 0, assumedSd = 0, found = 0, foundSd = 0] = (
      MEASURED.exec(await squirtLine()) ?? []
    ).map(Number);
    const truth = (squirtAngle(0.5, KIT_ON_TABLE.massRatio) * 180) / Math.PI;
    expect(Math.abs(found - truth)).toBeLessThan(Math.abs(assumed - truth));
    expect(foundSd).toBeLessThan(assumedSd);
    expect(await page.problems()).toEqual([]);
  });
});
