import { cutOfBallHit } from '../../units/ball-hit';
import { cutSizeInUnit } from '../../units/cut-unit';
import { formatNumber } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import { nudge } from '../../units/nudge';
import type { SpeedScale } from '../../units/speed-unit';
import type { CutUnit, DistanceUnit, LengthUnit } from '../../units/unit-names';

/** A figure often wanted, in the shown unit, and what it is called. */
export interface QuickPick {
  readonly label: string;
  /** Null where it is not known. */
  readonly figure: number | null;
}

const DISTANCES: Readonly<Record<DistanceUnit, readonly number[]>> = {
  m: [0.25, 0.5, 1, 1.5, 2],
  cm: [25, 50, 100, 150, 200],
  ft: [1, 2, 3, 5, 7],
  in: [10, 20, 40, 60, 80],
  diamonds: [1, 2, 3, 4, 6],
  'table-lengths': [0.125, 0.25, 0.5, 0.75, 1],
};

const HITS: readonly (readonly [string, number])[] = [
  ['full', 1],
  ['¾', 0.75],
  ['½', 0.5],
  ['¼', 0.25],
  ['⅛ ball', 0.125],
];

/** One speed from the middle of each word's span, m/s. */
const SPEEDS: readonly (readonly [string, number])[] = [
  ['touch', 0.4],
  ['soft', 0.75],
  ['medium', 1.5],
  ['firm', 2.5],
  ['power', 3.5],
];

/**
 * Mouths, m: the middle of what the WPA allows a corner (114.3-117.5 mm) and a side pocket
 * (127-130.2 mm), and a corner as halls tighten it (common practice, no source).
 */
const MOUTHS: readonly (readonly [string, number])[] = [
  ['tight', 0.108],
  ['corner', 0.116],
  ['side', 0.128],
];

const ELEVATIONS_DEG = [0, 3, 8, 15, 30] as const;

export function distancePicks(unit: DistanceUnit, write: (figure: number) => string): QuickPick[] {
  return DISTANCES[unit].map((figure) => ({ label: write(figure), figure }));
}

export function cutPicks(unit: CutUnit): QuickPick[] {
  return HITS.flatMap(([label, hit]) => {
    const cut = cutOfBallHit(hit);
    return cut.ok ? [{ label, figure: cutSizeInUnit(cut.value, unit) }] : [];
  });
}

/**
 * The speed words; after them the softest that still brings the object ball to the pocket.
 * @param reachMps null where that is not known
 */
export function speedPicks(
  { inUnit, facts }: Pick<SpeedScale, 'inUnit' | 'facts'>,
  reachMps: number | null,
): QuickPick[] {
  const words = SPEEDS.map(([label, speedMps]) => ({ label, figure: inUnit(speedMps) }));
  const label = 'just reaches the pocket';
  if (reachMps === null) return [...words, { label, figure: null }];
  // The next step up: on the very edge it would stop on the lip.
  const range = { min: 0, max: Number.POSITIVE_INFINITY };
  const figure = nudge(inUnit(reachMps), facts.fineStep, 1, range);
  return [...words, { label, figure }];
}

export function mouthPicks(unit: LengthUnit): QuickPick[] {
  return MOUTHS.map(([name, mouthM]) => {
    const figure = lengthInUnit(mouthM, unit);
    return { label: `${name} ${formatNumber(figure, LENGTH_UNITS[unit])}`, figure };
  });
}

export function elevationPicks(): QuickPick[] {
  return ELEVATIONS_DEG.map((figure) => ({ label: `${figure}°`, figure }));
}

/** Whether a figure is that pick, but for what conversion leaves. Relative. */
export function isPicked(figure: number, pick: number): boolean {
  return Math.abs(figure - pick) <= 1e-9 * Math.max(1, Math.abs(pick));
}
