import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { type OpenApp, openApp } from '../harness/open-app';
import { untilAssessed } from '../harness/read-room';
import { readAnswer, settle } from '../harness/read-shot';
import { openTile, tapButton } from '../harness/thumb';
import { untilDeskKept } from '../harness/until-kept';

let app: OpenApp;
beforeAll(async () => {
  app = await openApp();
});
afterEach(async () => {
  await tapButton(app.page, 'Close');
});
afterAll(() => app.close());

const opacityOf = (selector: string) =>
  app.page.locator(selector).evaluate((element) => Number(getComputedStyle(element).opacity));

it('says what is wrong with a bad number and keeps the last answer, greyed', async () => {
  const { page } = app;
  const before = await readAnswer(page);
  expect(await opacityOf('.shooter-diagram svg')).toBe(1);
  await openTile(page, 'distance');
  const field = page.getByRole('textbox', { name: 'Distance' });
  await field.fill('far');
  await settle(page);
  expect(await readAnswer(page)).toEqual(before);
  expect(await page.locator('.answer-figures.is-stale').count()).toBe(1);
  expect(await opacityOf('.shooter-diagram svg')).toBeLessThan(0.6);
  expect(await page.locator('.field-problem').textContent()).toContain('figures');

  await field.fill('0.70');
  await settle(page);
  expect(await page.locator('.answer-figures.is-stale').count()).toBe(0);
  expect(await readAnswer(page)).toEqual(before);
  // What the shot forgives is worked out a moment later.
  await untilAssessed(page);
  expect(await page.locator('.is-stale').count()).toBe(0);
  expect(app.guard.problems).toEqual([]);
});

it('takes decimals with a comma and fractions, in the unit chosen there and then', async () => {
  const { page } = app;
  await openTile(page, 'distance');
  await page.getByRole('combobox', { name: 'Unit of distance' }).selectOption('diamonds');
  const field = page.getByRole('textbox', { name: 'Distance' });
  await field.fill('3 1/2');
  await field.blur();
  await expect.poll(() => field.inputValue()).toBe('3½');
  await page.getByRole('combobox', { name: 'Unit of distance' }).selectOption('m');
  await expect.poll(() => field.inputValue()).toBe('1.11');
  await field.fill('0,8');
  await field.blur();
  await expect.poll(() => field.inputValue()).toBe('0.80');
});

it('tells why there is no aim and what would help, over the last answer', async () => {
  const { page } = app;
  const before = await readAnswer(page);
  await openTile(page, 'speed');
  await page.getByRole('textbox', { name: 'Speed off the tip' }).fill('0.1');
  await settle(page);
  expect(await page.locator('.refusal-message').textContent()).toMatch(/rest|reach|short/);
  expect(await page.locator('.refusal-remedy').textContent()).toMatch(/irmer|nearer/);
  expect(await page.locator('.is-stale .answer-lead').textContent()).not.toBe('');
  await page.getByRole('textbox', { name: 'Speed off the tip' }).fill('1.8');
  await settle(page);
  expect(await readAnswer(page)).toEqual(before);
});

it('tells the whole answer as a status once it stands still', async () => {
  const { page } = app;
  const status = page.locator('.answer').getByRole('status');
  await expect
    .poll(() => status.textContent())
    .toMatch(
      /^Aim: .* From the ghost: \d+ mm left\. It is (easy|fair|hard) for most; sure to ±\d+ mm: cue not/,
    );
  const before = await status.textContent();
  await openTile(page, 'cut');
  await tapButton(page, 'Thinner');
  expect(await status.textContent()).toBe(before);
  await expect.poll(() => status.textContent()).not.toBe(before);
});

it('warns in words of a raised cue', async () => {
  const { page } = app;
  await openTile(page, 'raised');
  await tapButton(page, '15°');
  await settle(page);
  const warnings = page.getByRole('list', { name: 'Warnings' });
  expect(await warnings.textContent()).toContain('ask the room’s owner first');
  await tapButton(page, '3°');
  await settle(page);
  expect(await page.locator('.warning-list', { hasText: 'raised' }).count()).toBe(0);
});

it('remembers the unit over a reload', async () => {
  const { page } = app;
  await openTile(page, 'speed');
  await page.getByRole('combobox', { name: 'Unit of speed' }).selectOption('mph');
  await expect.poll(() => page.locator('[data-opens="speed"]').textContent()).toContain('4');
  await untilDeskKept(page, { preferences: { speedUnit: 'mph' } });
  await page.reload();
  await expect.poll(() => page.locator('[data-opens="speed"]').textContent()).toContain('mph');
});
