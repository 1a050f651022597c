import type { Intent } from '../engine/goal/goal';
import type { NamedBall } from '../engine/lie/position';

/** A round patch of the bed in which the cue ball would do well, m. */
export interface Zone {
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

/** Balls laid on a table, and what to do with them. */
export interface SavedPosition {
  readonly id: string;
  readonly name: string;
  readonly origin: 'invented' | 'by-hand';
  /** Of the table it was laid on, nose to nose: on another it is scaled. */
  readonly lengthM: number;
  readonly widthM: number;
  readonly balls: readonly NamedBall[];
  readonly intent: { readonly [K in keyof Intent]: Intent[K] | null };
  readonly zone: Zone | null;
  readonly changedAtMs: number;
}
