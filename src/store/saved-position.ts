import type { Pot } from '../engine/goal/goal';
import type { LegalRule } from '../engine/goal/legal';
import type { NamedBall } from '../engine/lie/position';

/** A round patch of the bed in which the cue ball would do well, m. */
export interface Zone {
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

/** What is to be done, as far as it is chosen. */
export type GoalDraft = Omit<Pot, 'ball' | 'pocket'> & {
  readonly [K in 'ball' | 'pocket']: Pot[K] | null;
};

export const NOTHING_CHOSEN: GoalDraft = { kind: 'pot', ball: null, pocket: null, via: [] };

/** Balls laid on a table, and what to do with them. */
export interface SavedPosition {
  readonly id: string;
  readonly name: string;
  readonly origin: 'invented' | 'by-hand';
  /** Of the table it was laid on, nose to nose: on another it is scaled. */
  readonly lengthM: number;
  readonly widthM: number;
  readonly balls: readonly NamedBall[];
  readonly goal: GoalDraft;
  /** What may be touched first; left out: any ball. */
  readonly legal?: LegalRule;
  readonly zone: Zone | null;
  readonly changedAtMs: number;
}
