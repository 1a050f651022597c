/** Red, green and blue, 0 to 255. */
export type Rgb = readonly [number, number, number];

/** WCAG 2 contrast ratio of two colours. */
export function contrastRatio(a: Rgb, b: Rgb): number {
  const [one, other] = [luminance(a), luminance(b)];
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
}

function luminance(rgb: Rgb): number {
  const [r = 0, g = 0, b = 0] = rgb.map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** A colour laid over another; `alpha` is how much of it there is, 0 to 1. */
export function laidOver(top: Rgb, alpha: number, below: Rgb): Rgb {
  const mix = (i: 0 | 1 | 2) => top[i] * alpha + below[i] * (1 - alpha);
  return [mix(0), mix(1), mix(2)];
}

/** A computed colour, `rgb(…)` or `rgba(…)`, and its own alpha; null for `none` and the like. */
export function parseColour(css: string): { readonly rgb: Rgb; readonly alpha: number } | null {
  const [r, g, b, alpha = 1] = (css.match(/[\d.]+/g) ?? []).map(Number);
  if (r === undefined || g === undefined || b === undefined) return null;
  return { rgb: [r, g, b], alpha };
}
