import { expect, it } from 'vitest';
import { eventually, tapButton, textOf, waitFor } from '../harness/engines/engine-thumb';
import { inEachEngine } from '../harness/engines/in-each-engine';

inEachEngine('a card', (opened) => {
  it('is worked out, laid out, and drawn as a picture', async () => {
    const { app, page } = opened();
    await app.goTo('#kit/card');
    await waitFor(page, { css: '.card-side' });
    await eventually(() => textOf(page, '.card-side')).toMatch(
      /House cue.*Where to aim.*0\.\d\d→/s,
    );
    await page.evaluate(() => {
      // In the place of the download: how large the picture is that was to be one.
      HTMLAnchorElement.prototype.click = function () {
        void fetchPicture(this.href);
      };
      const create = URL.createObjectURL;
      let last: Blob | MediaSource;
      URL.createObjectURL = (blob) => {
        last = blob;
        return create(blob);
      };
      async function fetchPicture(href: string) {
        const { width, height } = await createImageBitmap(last as Blob);
        document.body.dataset.picture = `${href.slice(0, 5)} ${width} ${height > width}`;
      }
    });
    await tapButton(page, 'Picture');
    await eventually(() => page.evaluate(() => document.body.dataset.picture ?? '')).toMatch(
      /^blob: \d{3,} (true|false)$/,
    );
    expect(await page.problems()).toEqual([]);
  });
});
