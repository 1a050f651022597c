import type { SafetyGoal } from '../goal/goal';
import type { RestSpread } from '../plan/ranked-way';
import type { Way } from '../plan/way';
import type { Stroke } from '../stroke/stroke';
import type { Worth } from './worth';

/** A legal hit that leaves little, as the search found it: plain data. */
export interface FoundSafety {
  readonly goal: SafetyGoal;
  /** The cue's direction over the table, rad; the stroke's own aim is 0. */
  readonly headingRad: number;
  readonly stroke: Stroke;
  readonly way: Way;
  /** About what it is worth, 0 to 1: enough to choose what to work out. */
  readonly rough: number;
  /** About how easy the other player's best shot is: it tells apart what is worth the same. */
  readonly leaves: number;
}

/** A safety worked out in full: plain data. */
export interface ToldSafety extends Omit<FoundSafety, 'rough' | 'leaves'> {
  readonly worth: Worth;
  /** Where the cue ball comes to rest, of strokes that keep it on the table. */
  readonly rest: RestSpread;
  /** The ball that is met first, and where that comes to rest. */
  readonly struck: { readonly ball: number; readonly rest: RestSpread };
}

/** The ball that a safety meets first. */
export function struckBy({ via }: SafetyGoal): number {
  const last = via.at(-1);
  if (last === undefined || !('ball' in last)) throw new RangeError('a safety meets a ball');
  return last.ball;
}
