import { afterEach, describe, expect, it } from 'vitest';
import { openOneOf } from '../harness/all-ways-at-hand';
import { faultsAtAllSizes } from '../harness/layout-faults';
import { type OpenApp, openApp } from '../harness/open-app';
import { asPrinted, readPdf } from '../harness/read-pdf';
import { tapButton } from '../harness/thumb';

let app: OpenApp;
afterEach(async () => {
  expect(app.guard.problems).toEqual([]);
  await app.close();
});

const paragraphs = () => app.page.locator('.test-words p').allTextContents();

/** What stands on the card, letter by letter, as it is printed: on one side. */
async function printed(): Promise<string> {
  const { page } = app;
  await page.locator('.card-side').waitFor();
  const pages = readPdf(await page.pdf({ preferCSSPageSize: true }));
  expect(pages).toHaveLength(1);
  return pages[0]?.text ?? '';
}

describe('the card of a shot of a ladder', () => {
  it('has the shot that is to be played now, with its spot and the rule, and Back leads to it', async () => {
    app = await openApp({ hash: '#log/practice/speed' });
    const { page } = app;
    await page.locator('.test-shot:not(.is-stale)').waitFor();
    const told = await paragraphs();
    expect(told).toHaveLength(5);
    await tapButton(page, 'Card');
    const text = await printed();
    const bare = text.replaceAll(':', '');
    for (const line of told.slice(0, 4)) expect(bare).toContain(asPrinted(line));
    expect(text).toMatch(/Practice:speed.*Fivetriesashot.*Tickabox/);
    // The ring of the spot, beside the two balls.
    expect(await page.locator('.card-side circle.card-line').count()).toBe(1);
    expect(await page.locator('.card-ball').count()).toBe(2);
    expect(await faultsAtAllSizes(page)).toEqual([]);
    await tapButton(page, /Back$/);
    await expect.poll(paragraphs).toEqual(told);
  });
});

describe('the card of a way kept to be played again', () => {
  it('points the cue at the rail, as it is kept', async () => {
    app = await openApp({ hash: '#choose' });
    const { page } = app;
    await openOneOf(page, 'bank');
    await tapButton(page, 'Keep');
    await tapButton(page, /Kept: practise/);
    await page.locator('.test-words', { hasText: 'Point the cue at' }).waitFor();
    const told = await paragraphs();
    await page.goto(`${app.server.url}#log/practice`);
    await page.getByRole('button', { name: /^More: / }).tap();
    await tapButton(page, /^Card /);
    const text = await printed();
    for (const line of told.slice(0, 3)) expect(text).toContain(asPrinted(line));
  });
});
