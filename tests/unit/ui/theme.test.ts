import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrastRatio, type Rgb } from '../../harness/contrast';

const CSS = readFileSync('src/ui/theme.css', 'utf8');

/** The colours that each rule of the theme sets, in the order of the file: dark, light, system. */
const palettes = [...CSS.matchAll(/:root[^{]*\{([^}]*)\}/g)].map(
  ([, body = '']) =>
    new Map([...body.matchAll(/(--[\w-]+): (#[\da-f]{6});/g)].map(([, k, v]) => [k, v])),
);
const [dark, light, system] = palettes;

/** Contrast of two colours of a palette, by their names. */
function contrast(palette: Map<unknown, unknown> | undefined, a: string, b: string): number {
  return contrastRatio(rgbOf(palette?.get(`--${a}`)), rgbOf(palette?.get(`--${b}`)));
}

function rgbOf(hex: unknown): Rgb {
  const at = (from: number) => Number.parseInt(String(hex).slice(from, from + 2), 16);
  return [at(1), at(3), at(5)];
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

  // The ring of the focus is chalk; what is pressed has the last of the three behind it.
  it.each(['chalk', 'chalk-dim', 'aim', 'outline'])('draws %s at 3:1 or better', (line) => {
    expect(contrast(palette, line, 'slate')).toBeGreaterThanOrEqual(3);
    expect(contrast(palette, line, 'slate-raised')).toBeGreaterThanOrEqual(3);
  });
});

it('has a white cue ball with a dark rim in either theme', () => {
  const rgb = (name: string) => rgbOf(dark?.get(name));
  expect(Math.min(...rgb('--ball'))).toBeGreaterThan(240);
  expect(contrastRatio(rgb('--ball'), rgb('--ball-rim'))).toBeGreaterThan(7);
  for (const name of ['--ball', '--ball-rim']) expect(light?.has(name)).toBe(false);
  // The rim shows on a light table, the ball itself on a dark one.
  expect(contrastRatio(rgb('--ball-rim'), rgbOf(light?.get('--slate')))).toBeGreaterThan(3);
  expect(contrastRatio(rgb('--ball'), rgbOf(dark?.get('--slate')))).toBeGreaterThan(3);
});

it('is the light one on a phone that asks for light', () => {
  expect(light?.size).toBeGreaterThan(8);
  expect(system).toEqual(light);
});

it('opens dark in the colour that the page itself paints first', () => {
  expect(readFileSync('index.html', 'utf8')).toContain(`background: ${dark?.get('--slate')};`);
});

/** In sizes of their own: the answer, what is typed, a face in radii, a shared screen, and words that follow others. */
const OWN_SIZES = /(AnswerBlock|Keypad|CoachView|TapPad|TipFace|SmallTiles|TableBoard)\.css$/;

it('writes all else in one scale of text', () => {
  const sheets = readdirSync('src/ui', { recursive: true }).map(String);
  const styles = sheets.filter((name) => name.endsWith('.css'));
  expect(styles.length).toBeGreaterThan(40);
  const others = styles
    .filter((name) => !OWN_SIZES.test(name))
    .flatMap((name) => {
      const sizes = readFileSync(`src/ui/${name}`, 'utf8').match(/font-size: [^;]*/g) ?? [];
      return sizes.filter((size) => !size.includes('var(--text')).map((size) => `${name} ${size}`);
    });
  expect(others).toEqual([]);
});
