import type { Page } from 'playwright-core';
import { contrastRatio, laidOver, parseColour, type Rgb } from './contrast';
import { type DrawnMark, lookAtDrawings, type Paint } from './drawn-marks';

/** The least contrast of lines and areas (WCAG 1.4.11), and of text (1.4.3). */
interface Wanted {
  readonly lines: number;
  readonly text: number;
}

const AA: Wanted = { lines: 3, text: 4.5 };
const MORE: Wanted = { lines: 4.5, text: 7 };

/** The page is left in the last of them. */
const THEMES = ['light', 'dark'] as const;

const AS_IT_IS = { forcedColors: null, colorScheme: null, contrast: null } as const;

/** Each way a reader may have the colours in either theme, and what is then asked of drawings. */
const READERS_COLOURS = [
  { ...AS_IT_IS, wanted: AA },
  { forcedColors: 'active', colorScheme: 'dark', contrast: null, wanted: AA },
  { forcedColors: 'active', colorScheme: 'light', contrast: null, wanted: AA },
  { forcedColors: null, colorScheme: null, contrast: 'more', wanted: MORE },
] as const;

/**
 * Everything drawn that does not stand out from what lies behind it: in both themes, in forced
 * colours and with more contrast. Leaves the page in its dark theme.
 */
export async function contrastFaults(page: Page): Promise<string[]> {
  const faults: string[] = [];
  const look = lookAtDrawings(page);
  for (const { wanted, ...media } of READERS_COLOURS) {
    await page.emulateMedia(media);
    for (const [i, marks] of (await look(THEMES)).entries()) {
      const how = [THEMES[i], ...Object.values(media)].filter(Boolean).join(' ');
      faults.push(...faint(marks, wanted).map((fault) => `${how}: ${fault}`));
    }
  }
  await page.emulateMedia(AS_IT_IS);
  return faults;
}

/** The marks that are too faint, and how faint. */
export function faint(marks: readonly DrawnMark[], wanted: Wanted): string[] {
  return marks.flatMap((mark) => {
    const ratio = ratioOf(mark);
    const least = mark.isText ? wanted.text : wanted.lines;
    return ratio === null || ratio >= least ? [] : [`${ratio.toFixed(2)}:1 ${mark.name}`];
  });
}

/** What half of a mark has at least: a line may cross an area of its own colour. */
function ratioOf(mark: DrawnMark): number | null {
  const ratios = mark.under.flatMap((areas) => ratioOver(mark, areas) ?? []).sort((a, b) => a - b);
  return ratios[Math.floor(ratios.length / 2)] ?? null;
}

/** A mark shows by its edge or its area, a text by its fill on its halo; null where neither is painted. */
function ratioOver({ isText, fill, stroke, page }: DrawnMark, areas: readonly Paint[]) {
  const ground: Rgb = parseColour(page)?.rgb ?? [255, 255, 255];
  const behind = areas.reduce((below, area) => painted(area, below) ?? below, ground);
  const halo = (isText ? painted(stroke, behind) : null) ?? behind;
  const inks = [painted(fill, halo), isText ? null : painted(stroke, behind)];
  const ratios = inks.flatMap((ink) => (ink ? [contrastRatio(ink, halo)] : []));
  return ratios.length === 0 ? null : Math.max(...ratios);
}

function painted({ css, alpha }: Paint, below: Rgb): Rgb | null {
  const colour = parseColour(css);
  return colour && laidOver(colour.rgb, colour.alpha * alpha, below);
}
