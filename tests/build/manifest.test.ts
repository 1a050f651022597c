import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bytesOf, shipped, textOf } from './dist';
import { readPngHeader } from './png-header';

interface Icon {
  readonly src: string;
  readonly sizes: string;
  readonly type: string;
  readonly purpose: string;
}

/** What the app's own dark theme is painted on. */
const slate = /--slate: (#[0-9a-f]{6});/.exec(readFileSync('src/ui/theme.css', 'utf8'))?.[1];
const page = textOf('index.html');
const manifest = JSON.parse(textOf('manifest.webmanifest')) as Record<string, unknown> & {
  icons: Icon[];
  screenshots: Omit<Icon, 'purpose'>[];
};

describe('the manifest', () => {
  it('names the app and opens it on its own, whatever way the phone is held', () => {
    expect(manifest).toMatchObject({
      name: 'Leeway',
      short_name: 'Leeway',
      lang: 'en',
      display: 'standalone',
      theme_color: slate,
      background_color: slate,
    });
    expect(manifest.description).toMatch(/cue/);
    expect(manifest).not.toHaveProperty('orientation');
    expect(manifest).not.toHaveProperty('prefer_related_applications');
  });

  it('stays within the folder it lies in', () => {
    expect(manifest).toMatchObject({ start_url: './', scope: './' });
    // A relative id would be resolved against the origin and lose the folder.
    expect(manifest).not.toHaveProperty('id');
    expect(page).toContain('<link rel="manifest" href="./manifest.webmanifest">');
  });

  it('has icons of 192 and 512 pixels, and one to crop', () => {
    const offered = manifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`);
    expect(offered).toEqual(['192x192 any', '512x512 any', '512x512 maskable']);
  });

  it('has two pictures of the app', () => {
    expect(manifest.screenshots).toHaveLength(2);
  });

  it('states each icon’s and picture’s true size', () => {
    for (const { src, sizes, type } of [...manifest.icons, ...manifest.screenshots]) {
      const { widthPx, heightPx } = readPngHeader(bytesOf(src));
      expect(`${widthPx}x${heightPx}`).toBe(sizes);
      expect(type).toBe('image/png');
    }
  });

  it('leaves no see-through corner in an icon the system crops', () => {
    const maskable = manifest.icons.find(({ purpose }) => purpose === 'maskable');
    expect(readPngHeader(bytesOf(maskable?.src ?? '')).hasAlpha).toBe(false);
  });
});

describe('the page', () => {
  it('carries the icon a Home Screen takes', () => {
    const href = /<link rel="apple-touch-icon" href="\.\/([^"]+)"/.exec(page)?.[1] ?? '';
    expect(shipped).toContain(href);
    expect(readPngHeader(bytesOf(href))).toEqual({ widthPx: 180, heightPx: 180, hasAlpha: false });
  });

  it('can be zoomed and reaches under the notch', () => {
    const viewport = /<meta name="viewport" content="([^"]+)"/.exec(page)?.[1];
    expect(viewport).toBe('width=device-width, initial-scale=1, viewport-fit=cover');
  });

  it('paints the first frame, and the bars around it, in the slate of its dark theme', () => {
    expect(slate).toBeDefined();
    expect(/<style>[^<]*background: ?(#\w+)/.exec(page)?.[1]).toBe(slate);
    expect(/<meta name="theme-color" content="(#\w+)"/.exec(page)?.[1]).toBe(slate);
  });

  it('has a language, a description and a word for browsers without scripts', () => {
    expect(page).toContain('<html lang="en">');
    expect(page).toMatch(/<meta\s+name="description"\s+content="[^"]{40,}"/);
    expect(page).toMatch(/<noscript>\s*<p>[^<]+<\/p>\s*<\/noscript>/);
  });
});
