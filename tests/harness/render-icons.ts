import { readFile, writeFile } from 'node:fs/promises';
import { launchBrowser } from './launch-browser';

/**
 * Draws the PNG icons from the one hand-made mark, public/favicon.svg. Run by `npm run icons`
 * after changing it; the drawings are committed.
 */
const ICONS: readonly { file: string; sizePx: number; look: 'rounded' | 'square' | 'maskable' }[] =
  [
    { file: 'icon-192', sizePx: 192, look: 'rounded' },
    { file: 'icon-512', sizePx: 512, look: 'rounded' },
    { file: 'maskable-512', sizePx: 512, look: 'maskable' },
    { file: 'apple-touch-icon-180', sizePx: 180, look: 'square' },
  ];

/** Android may crop a maskable icon to a circle of 80 % of its width, which this keeps clear of. */
const MASKABLE_SCALE = 0.76;

const mark = await readFile('public/favicon.svg', 'utf8');
const slate = /<rect[^>]*fill="(#[0-9a-f]{6})"/.exec(mark)?.[1];
if (!slate) throw new Error('public/favicon.svg has no background rectangle to take the colour of');

const browser = await launchBrowser();
try {
  for (const { file, sizePx, look } of ICONS) {
    const page = await browser.newPage({ viewport: { width: sizePx, height: sizePx } });
    const scale = look === 'maskable' ? MASKABLE_SCALE : 1;
    const background = look === 'rounded' ? 'transparent' : slate;
    await page.setContent(
      `<style>
        html { background: ${background}; }
        body { margin: 0; }
        svg { display: block; width: ${sizePx}px; height: ${sizePx}px; transform: scale(${scale}); }
      </style>${mark}`,
    );
    const png = await page.screenshot({ omitBackground: look === 'rounded' });
    await writeFile(`public/icons/${file}.png`, png);
    await page.close();
  }
} finally {
  await browser.close();
}
