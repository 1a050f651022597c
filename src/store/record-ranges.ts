import { KIT_NUMBERS } from '../engine/kit/kit-numbers';
import type { Range } from '../engine/numerics/range';
import type { Pocket } from './records';

/** What a record may hold: what the engine accepts, narrowed where a real thing is narrower. */
export const CUE_RANGES = {
  /** The engine takes a cue without end mass, infinity; a person's own cue has a finite one. */
  massRatio: { min: KIT_NUMBERS.massRatio.range.min, max: 200 },
  /** From a thin snooker tip to a break cue's (common practice, no source). */
  tipDiameterM: { min: 0.007, max: 0.015 },
  /** A dome of no radius is a point; no tip is filed to one. */
  tipRadiusM: { min: 0.004, max: KIT_NUMBERS.tipRadiusM.range.max },
} as const satisfies Record<string, Range>;

/** From a toy table to a little more than a snooker table (3.569 m by 1.778 m, WPBSA). */
export const TABLE_RANGES = {
  lengthM: { min: 0.8, max: 3.8 },
  widthM: { min: 0.4, max: 2 },
} as const satisfies Record<string, Range>;

/** A nine-foot table, nose to nose (WPA equipment specification). */
export const NINE_FOOT = { lengthM: 2.54, widthM: 1.27 } as const;

/** Where on a table something may lie, from its middle, m. */
export const BED_RANGES = {
  xM: { min: -TABLE_RANGES.widthM.max / 2, max: TABLE_RANGES.widthM.max / 2 },
  yM: { min: -TABLE_RANGES.lengthM.max / 2, max: TABLE_RANGES.lengthM.max / 2 },
} as const satisfies Record<string, Range>;

/** A patch for the cue ball to rest in: from a ball's width to as good as half a table, m. */
export const ZONE_RADIUS_RANGE: Range = { min: 0.03, max: 1 };

/** A cue lies on its bridge hand, so its butt is never far above the cloth; cues for children count. */
export const BUTT_RANGES = {
  buttHeightM: { min: 0, max: 1.2 },
  cueLengthM: { min: 0.7, max: 2 },
} as const satisfies Record<string, Range>;

/** Every time a Date can hold, from 1970 on (ECMAScript, time values and time range). */
export const TIME_RANGE_MS: Range = { min: 0, max: 8.64e15 };

/** How many of ten somebody makes. */
export const MADE_RANGE: Range = { min: 0, max: 10 };

/** How little is known of a quantity: as the doors take it. */
export const SPREAD_RANGE: Range = { min: 0, max: 2 };

/** What a player may enter: a mouth a little wider than any ball, up to a wide-open one. */
export const POCKET_RANGES = {
  distanceM: { min: 0.01, max: 4 },
  mouthM: { min: 0.085, max: 0.3 },
} as const satisfies Record<keyof Pocket, Range>;
