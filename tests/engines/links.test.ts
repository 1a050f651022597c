import { expect, it } from 'vitest';
import { LINK_OF_VERSION_1 } from '../fixtures/link-of-version-1';
import { eventually, tap, tapButton, textOf, waitFor } from '../harness/engines/engine-thumb';
import { inEachEngine } from '../harness/engines/in-each-engine';
import { readFigures } from '../harness/engines/read-figures';

inEachEngine('a link', (opened) => {
  it('is opened, asked about, kept and given back', async () => {
    const { app, page } = opened();
    const before = await readFigures(page);
    await app.goTo(`#kit/link/${LINK_OF_VERSION_1}`);
    await waitFor(page, { css: 'h2', name: 'This link brings' });
    expect(await page.evaluate(() => location.hash)).toBe('#kit/link');
    await tap(page, { css: '.link-part', name: /Lent cue/ });
    await tapButton(page, 'Keep it');
    await eventually(() => textOf(page, '.undo-delete')).toMatch(/is on Shot.*kit is kept/);
    await tapButton(page, 'Go to Shot');
    await waitFor(page, { css: '.shot-place' });
    const brought = await readFigures(page);
    expect(brought).not.toEqual(before);
    await page.evaluate(() => history.back());
    await tapButton(page, /Undo$/);
    await eventually(() => textOf(page, '.undo-delete')).toBe('');
    await page.evaluate(() => {
      location.hash = '#shot';
    });
    await eventually(() => readFigures(page)).toEqual(before);
    expect(await page.problems()).toEqual([]);
  });

  it('is drawn as a code, and shown as text where nothing takes it', async () => {
    const { app, page } = opened();
    await app.goTo('#kit/share/kit');
    await waitFor(page, { css: '.code-picture' });
    const [link, drawn] = await page.evaluate(() => [
      document.querySelector<HTMLTextAreaElement>('.link-text')?.value ?? '',
      document.querySelector('.code-picture')?.getBoundingClientRect().width ?? 0,
    ]);
    expect(link).toMatch(/#kit\/link\/[\w-]{100,}$/);
    expect(drawn).toBeGreaterThan(250);
    expect(await page.problems()).toEqual([]);
  });
});
