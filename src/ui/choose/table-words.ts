import type { BallName, NamedBall } from '../../engine/lie/position';
import type { PocketName } from '../../engine/table/pocket-shape';
import { roughDistance } from '../../units/rough-distance';
import type { DistanceUnit } from '../../units/unit-names';

/** Diamonds along a table. */
const ALONG = 8;

/** Row by row as they lie on the drawing with the break end on the left. */
export const POCKETS_TURNED: readonly PocketName[] = [
  'near-left',
  'middle-left',
  'far-left',
  'near-right',
  'middle-right',
  'far-right',
];

/** As seen from the break end: "far right". */
export function pocketWords(pocket: PocketName): string {
  return pocket.replace('-', ' ');
}

/** "the cue ball", "the 3". */
export function ballWords(name: BallName): string {
  return name === 'cue' ? 'the cue ball' : `the ${name}`;
}

/** As a button's name: "cue ball", "3 ball". */
export function ballLabel(name: BallName): string {
  return `${name} ball`;
}

interface BedSize {
  readonly lengthM: number;
  readonly widthM: number;
}

interface Spot {
  readonly xM: number;
  readonly yM: number;
}

/** Diamonds along from the break end, however the table lies, and from the left: "2.0 diamonds along, 1.5 from the left". */
export function spotWords(spot: Spot, bed: BedSize): string {
  return diamondWords(spot, bed).replace(' along', ' diamonds along');
}

/** Where each ball is to lie: "Cue ball: 2.0 diamonds along, 1.5 from the left." */
export function spotLines({
  balls,
  ...bed
}: BedSize & { readonly balls: Balls }): readonly string[] {
  return balls.map((ball) => `${capitalised(ballLabel(ball.name))}: ${spotWords(ball, bed)}.`);
}

type Balls = readonly NamedBall[];

/** The same where it is clear what is counted: "2.0 along, 1.5 from the left". */
export function diamondWords({ xM, yM }: Spot, { lengthM, widthM }: BedSize): string {
  const diamonds = (metres: number) => ((metres * ALONG) / lengthM).toFixed(1);
  return `${diamonds(yM + lengthM / 2)} along, ${diamonds(xM + widthM / 2)} from the left`;
}

/** How large a round patch is: "0.50 m across". */
export function acrossWords(
  { radiusM }: { readonly radiusM: number },
  unit: DistanceUnit,
  { lengthM }: BedSize,
): string {
  return `${roughDistance(2 * radiusM, unit, lengthM)} across`;
}

/** A share in per cent, a little one as "under 1 %"; never parted from its sign. */
export function percentWords(share: number): string {
  if (share > 0 && share < 0.01) return 'under 1\u00a0%';
  return `${Math.round(share * 100)}\u00a0%`;
}

export function capitalised(line: string): string {
  return line.charAt(0).toUpperCase() + line.slice(1);
}
