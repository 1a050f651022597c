import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { squirtAngle } from '../../src/engine/impacts/strike';
import {
  beginTrial,
  playAttempt,
  stepTitle,
  tapDigits,
  tapFigure,
} from '../harness/measure-at-table';
import { type OpenApp, openApp, untilRendered } from '../harness/open-app';
import { KIT_ON_TABLE } from '../harness/predicted-trial';
import { readAnswer } from '../harness/read-shot';
import { tap, tapButton } from '../harness/thumb';
import { untilKept } from '../harness/until-kept';

let app: OpenApp;
const open = async () => {
  app = await openApp();
};
const close = async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
};

const toMeasure = () => tap(app.page, app.page.getByRole('button', { name: /Measure it/ }));
const squirtLine = async () =>
  (await app.page.locator('.sureness-list li').first().textContent()) ?? '';
const measured = /: ([\d.]+) ± ([\d.]+)° was assumed, ([\d.]+) ± ([\d.]+)° measured/;

describe('a whole calibration, by taps alone', () => {
  beforeAll(open);
  afterAll(close);

  it('teaches the cue’s squirt, and the aim on Shot with it', async () => {
    const { page } = app;
    const before = await readAnswer(page);
    await toMeasure();
    await expect.poll(squirtLine).toMatch(/± [\d.]+° is assumed\./);
    const names: string[] = [];
    for (const label of ['Line', 'Line', 'Curve', 'Coast']) {
      const name = await beginTrial(page, label);
      names.push(name);
      await playAttempt(page, name);
      await page.getByText('It counts.').waitFor();
      await tapButton(page, 'To all trials');
    }
    expect(new Set(names).size).toBe(4);
    await expect.poll(squirtLine).toMatch(measured);
    const [, assumed = 0, assumedSd = 0, found = 0, foundSd = 0] = (
      measured.exec(await squirtLine()) ?? []
    ).map(Number);
    const truth = (squirtAngle(0.5, KIT_ON_TABLE.massRatio) * 180) / Math.PI;
    expect(Math.abs(found - truth)).toBeLessThan(Math.abs(assumed - truth) / 2);
    expect(foundSd).toBeLessThan(assumedSd / 1.5);
    await tap(page, page.getByRole('link', { name: 'Shot' }));
    const after = await readAnswer(page);
    expect(after.angle).not.toBe(before.angle);
    expect(await page.locator('.kit-strip').textContent()).not.toContain('Not your cue yet');
  });
});

describe('an attempt left on the way', () => {
  beforeEach(open);
  afterEach(close);

  it('is gone on with from the Measure page and from Kit', async () => {
    const { page } = app;
    await toMeasure();
    const name = await beginTrial(page, 'Line');
    await tapButton(page, 'It is placed');
    await tapButton(page, 'Leave it for later');
    await tapButton(page, `Go on: ${name}, step 2 of 3`);
    expect(await stepTitle(page)).toBe('Play it');
    await tapButton(page, /Step back/);
    await expect.poll(() => stepTitle(page)).toBe('Place the cue ball');
    await page.goBack();
    await page.goto(`${app.server.url}#kit`);
    await expect.poll(() => page.locator('[data-opens="measure"]').textContent()).toContain(name);
  });

  it('stands where it stood after a reload, half a figure and its unit included', async () => {
    const { page } = app;
    await toMeasure();
    await beginTrial(page, 'Line');
    await tapButton(page, 'It is placed');
    await tapButton(page, 'Played');
    await page.getByRole('combobox', { name: 'Unit' }).selectOption('diamonds');
    await tapDigits(page, '0.2');
    await tapButton(page, 'left');
    await untilKept(page, 'attempts', {
      typed: expect.objectContaining({ text: '0.2 diamonds left' }),
    });
    await page.reload();
    await untilRendered(page);
    expect(await stepTitle(page)).toBe('Where did it touch?');
    expect(await page.getByLabel('Figure').textContent()).toMatch(/^0\.2.*left/);
    await tapFigure(page, '5');
    await page.getByText('Taken down').first().waitFor();
    // 0.25 diamonds of 317.5 mm.
    await expect
      .poll(() => page.locator('.reading-rows b').first().textContent())
      .toMatch(/^79 mm/);
  });
});

describe('an attempt taken down', () => {
  beforeAll(open);
  afterAll(close);

  it('counts, and tells the squirt by itself', async () => {
    await toMeasure();
    const name = await beginTrial(app.page, 'Line');
    await playAttempt(app.page, name);
    await app.page.getByText('It counts.').waitFor();
    await tapButton(app.page, 'To all trials');
    await expect.poll(squirtLine).toMatch(measured);
  });

  it('is struck out, teaches nothing then, and is taken back in', async () => {
    const { page } = app;
    const taught = await squirtLine();
    await tapButton(page, /^Strike out/);
    await expect.poll(squirtLine).toMatch(/is assumed/);
    await tapButton(page, /^Take back in/);
    await expect.poll(squirtLine).toBe(taught);
  });

  it('is deleted and put back', async () => {
    const { page } = app;
    const taught = await squirtLine();
    await tapButton(page, /^Delete Line/);
    await expect.poll(squirtLine).toMatch(/is assumed/);
    expect(await page.locator('.attempt-list > li').count()).toBe(0);
    await tapButton(page, 'Put it back');
    await expect.poll(squirtLine).toBe(taught);
  });

  it('is in the cue’s history, and before the new tip once that is marked', async () => {
    const { page } = app;
    await page.goto(`${app.server.url}#kit/cues/demo-cue-house`);
    const eras = page.locator('.record-history li');
    await expect
      .poll(() => eras.allInnerTexts())
      .toEqual([expect.stringMatching(/^Before any change: squirt .* ± .*°\.$/)]);
    await tapButton(page, 'New tip');
    await expect.poll(() => eras.allInnerTexts()).toHaveLength(2);
    expect((await eras.allInnerTexts())[0]).toMatch(/^Since new tip/);
  });
});
