import { RAD_PER_DEG } from '../numerics/angle';
import type { Range } from '../numerics/range';

/** How pockets of one kind are cut. */
export interface PocketCut {
  /** Between the points of the two cushions, where the nose lines meet the jaws, m. */
  readonly mouthM: number;
  /** Angle of the cushion at its point, between nose and jaw, rad. */
  readonly cutRad: number;
  /** From the middle of the mouth to where the bed drops away, m. */
  readonly shelfM: number;
}

/** How the pockets of a table are cut. */
export interface PocketStandard {
  readonly corner: PocketCut;
  readonly side: PocketCut;
  /** Radius with which the points of the cushions are rounded, seen from above, m. */
  readonly pointRadiusM: number;
}

/**
 * Mid-way of the WPA equipment specification: corner mouth 114.3-117.5 mm, cut 142 ± 1°; side mouth
 * 127-130.2 mm, cut 104 ± 1°; shelf 25.4-57.2 mm at the corners, 0-9.5 mm at the sides (shelves from
 * memory). The rounding of the points is our estimate.
 */
export const WPA_POCKETS: PocketStandard = {
  corner: { mouthM: 0.1159, cutRad: 142 * RAD_PER_DEG, shelfM: 0.0413 },
  side: { mouthM: 0.1286, cutRad: 104 * RAD_PER_DEG, shelfM: 0.0048 },
  pointRadiusM: 0.003,
};

/** Nose to nose, m. */
interface TableSize {
  readonly lengthM: number;
  readonly widthM: number;
}

/**
 * Sources: WPA equipment specification for nine and eight feet. Makers of seven-foot tables differ;
 * this is the one of 78 by 39 inches (from memory).
 */
export const TABLE_SIZES = {
  'nine-foot': { lengthM: 2.54, widthM: 1.27 },
  'eight-foot': { lengthM: 2.3368, widthM: 1.1684 },
  'seven-foot': { lengthM: 1.9812, widthM: 0.9906 },
} as const satisfies Record<string, TableSize>;

/** What the engine accepts of a table's size, m. */
export const TABLE_RANGES = {
  lengthM: { min: 1, max: 4 },
  widthM: { min: 0.5, max: 2.2 },
} as const satisfies Record<keyof TableSize, Range>;

/** What it accepts of a pocket: wide of what tables show, and within what leaves every jaw a gap. */
export const POCKET_RANGES = {
  mouthM: { min: 0.07, max: 0.16 },
  shelfM: { min: 0, max: 0.06 },
} as const satisfies Record<Exclude<keyof PocketCut, 'cutRad'>, Range>;

/** Likewise of the cut of a jaw, which must narrow the pocket but not close it, rad. */
export const CUT_RANGES = {
  corner: { min: 135 * RAD_PER_DEG, max: 150 * RAD_PER_DEG },
  side: { min: 90 * RAD_PER_DEG, max: 110 * RAD_PER_DEG },
} as const satisfies Record<'corner' | 'side', Range>;

export const POINT_RADIUS_RANGE: Range = { min: 0, max: 0.012 };
