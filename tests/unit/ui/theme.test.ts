import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const CSS = readFileSync('src/ui/theme.css', 'utf8');

/** The colours that each rule of the theme sets, in the order of the file: dark, light, system. */
const palettes = [...CSS.matchAll(/:root[^{]*\{([^}]*)\}/g)].map(
  ([, body = '']) =>
    new Map([...body.matchAll(/(--[\w-]+): (#[\da-f]{6});/g)].map(([, k, v]) => [k, v])),
);
const [dark, light, system] = palettes;

/** WCAG 2 contrast ratio. */
function contrast(palette: Map<unknown, unknown> | undefined, a: string, b: string): number {
  const [one = 0, other = 0] = [a, b].map((name) => luminance(String(palette?.get(`--${name}`))));
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe.each([
  ['dark', dark],
  ['light', light],
])('the %s theme', (_, palette) => {
  it.each(['chalk', 'chalk-dim', 'aim-text'])('writes answers in %s at 7:1 or better', (ink) => {
    expect(contrast(palette, ink, 'slate')).toBeGreaterThanOrEqual(7);
    expect(contrast(palette, ink, 'slate-raised')).toBeGreaterThanOrEqual(7);
  });

  it('writes what is out of force in chalk-faint at 4.5:1 or better', () => {
    expect(contrast(palette, 'chalk-faint', 'slate')).toBeGreaterThanOrEqual(4.5);
  });

  it.each(['aim', 'outline'])('draws %s at 3:1 or better', (line) => {
    expect(contrast(palette, line, 'slate')).toBeGreaterThanOrEqual(3);
    expect(contrast(palette, line, 'slate-raised')).toBeGreaterThanOrEqual(3);
  });
});

it('is the light one on a phone that asks for light', () => {
  expect(light?.size).toBeGreaterThan(8);
  expect(system).toEqual(light);
});

it('opens dark in the colour that the page itself paints first', () => {
  expect(readFileSync('index.html', 'utf8')).toContain(`background: ${dark?.get('--slate')};`);
});
