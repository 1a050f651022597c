import { expect, it } from 'vitest';
import { EXAMPLE_POSITIONS } from '../../src/store/example-positions';
import { eventually, seen, tap, tapButton, textOf, waitFor } from '../harness/engines/engine-thumb';
import { inEachEngine } from '../harness/engines/in-each-engine';
import { PATIENCE_MS } from '../harness/patience';

inEachEngine('choosing', (opened) => {
  it('opens an example, compares the ways to play it, and fills Shot in from one', async () => {
    const { app, page } = opened();
    await app.goTo('#choose');
    const example = EXAMPLE_POSITIONS.at(-1);
    if (!example) throw new Error('there is no example');
    await tapButton(page, /^Positions/);
    await tap(page, { css: '.record-choose', name: new RegExp(example.name) });
    await waitFor(page, { css: '.choose-place' });
    await eventually(() =>
      page.evaluate(() => document.querySelectorAll('.board-ball').length),
    ).toBe(example.balls.length);
    await tapButton(page, 'Ways');
    await expect
      .poll(() => seen(page, { css: '.way-row' }), { timeout: PATIENCE_MS, interval: 200 })
      .toBe(true);
    await expect
      .poll(() => seen(page, { css: '.compare progress' }), { timeout: PATIENCE_MS, interval: 200 })
      .toBe(false);
    const chances = await page.evaluate(() =>
      [...document.querySelectorAll('.way-chance')].map(({ textContent }) => textContent),
    );
    expect(chances.length).toBeGreaterThan(2);
    // Of nobody known no figure is told.
    expect(
      chances.filter((chance) => !/^(easiest|about as easy|(much )?harder)$/.test(chance ?? '')),
    ).toEqual([]);
    await tap(page, { css: '.way-row' });
    await waitFor(page, { css: '.way-stroke' });
    await eventually(() =>
      page.evaluate(() => document.querySelectorAll('.fan-path').length > 2),
    ).toBe(true);
    const speed = /([\d.]+) m\/s/.exec(await textOf(page, '.way-stroke'))?.[1];
    await tapButton(page, 'Aim it');
    await waitFor(page, { css: '.shot-place' });
    const filled = /[\d.]+/.exec(
      await textOf(page, '[data-opens="speed"] b, [data-opens="speed"]'),
    );
    expect(Number(filled?.[0])).toBeCloseTo(Number(speed), 0);
    expect(await page.evaluate(() => document.body.innerHTML.includes('NaN'))).toBe(false);
    expect(await page.problems()).toEqual([]);
  });

  it('looks at ways of every kind, lists one kind, and lays the cue for it', async () => {
    const { page } = opened();
    await page.evaluate(() => {
      location.hash = '#choose/ways';
    });
    await tapButton(page, /All ways/);
    await tap(page, { css: '.kind-chip', name: /^All/ });
    await expect
      .poll(() => textOf(page, '.compare-note'), { timeout: PATIENCE_MS, interval: 200 })
      .toMatch(/wisest first/);
    await tap(page, { css: '.kind-chip', name: /^Kicks/ });
    await tap(page, { css: '.all-way-row' });
    await eventually(() =>
      page.evaluate(() => document.querySelectorAll('.fan-path').length > 2),
    ).toBe(true);
    await tapButton(page, 'Aim it');
    await waitFor(page, { css: '.aim-point' });
    expect(await textOf(page, '.aim-point')).toMatch(/^Point the cue at the .*\.$/);
    expect(await page.evaluate(() => document.querySelectorAll('.board-aim').length)).toBe(1);
    expect(await page.problems()).toEqual([]);
  });
});
