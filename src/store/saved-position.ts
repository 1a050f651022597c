import type { Pot, Step, WayKind } from '../engine/goal/goal';
import type { LegalRule } from '../engine/goal/legal';
import type { NamedBall } from '../engine/lie/position';
import type { Stroke } from '../engine/stroke/stroke';

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

/** A try of a way that Shot cannot ask, and so nothing is learnt from. */
export interface DrillTry {
  readonly playerId: string;
  readonly atMs: number;
  readonly went: boolean;
}

/** A way kept to be played again. */
export interface KeptDrill {
  readonly kind: WayKind;
  /** All that happens until the ball of the goal falls. */
  readonly via: readonly Step[];
  /** As it is to be struck, in the table's frame: `aimRad` is its heading, 0 away from the break end. */
  readonly stroke: Stroke;
  /** The oldest first; of a direct cut none, for they are logged as shots. */
  readonly tries: readonly DrillTry[];
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
  readonly goal: GoalDraft;
  /** What may be touched first; left out: any ball. */
  readonly legal?: LegalRule;
  readonly zone: Zone | null;
  /** The way to play it, where it is kept to be practised: then Choose does not lay it. */
  readonly drill?: KeptDrill | null;
  readonly changedAtMs: number;
}
