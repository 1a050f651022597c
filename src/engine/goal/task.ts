import type { Kit } from '../kit/kit';
import type { KitQuantity } from '../kit/kit-spread';
import type { Stroke } from '../stroke/stroke';

/** Why a played stroke has no miss to tell. */
export type Lost =
  /** The ball that should go is not touched. */
  | 'untouched'
  /** It stops on its way. */
  | 'short'
  /** The tip would slip. */
  | 'miscue'
  /** A ball of the shot meets one that has no part in it. */
  | 'other-ball'
  /** Two balls of the shot meet once more than they should. */
  | 'kiss'
  /** A ball of the shot comes to a cushion, or a pocket, that is not on its way. */
  | 'other-way';

/** How what should go comes to its target. */
export interface Arrival {
  /** How far right of it, as a share of what the target allows: it goes while this is within ±1. */
  readonly miss: number;
  /** How fast it crosses the mouth, m/s; infinite where there is none to cross. */
  readonly speedMps: number;
}

/** A miss as a share of what the target allows, right +; or why there is none. */
export type MissOrLost = number | Lost;

/**
 * All that the room for error and the ranking know of a goal: how near a stroke comes to it, and
 * which aims reach it. The balls and the target are held fast; stroke and kit vary.
 */
export interface Task {
  arrivalAt(kit: Kit, stroke: Stroke): Arrival | Lost;
  /** The direction in which what should go leaves, rad, right + of its target line. */
  directionAt(kit: Kit, stroke: Stroke): number | Lost;
  /** Aims, rad, that reach the goal, the best first; [] where none does. The stroke's own is unused. */
  aims(kit: Kit, stroke: Omit<Stroke, 'aimRad'>): readonly number[];
  /** What of a kit it may hang on at all, in the order in which a kit's quantities are told. */
  readonly quantities: readonly KitQuantity[];
  /** How far from the target line it may leave, on a straight way, rad either way. */
  readonly allowedRad: number;
  /** On which side of the target line a hit too thin passes: 1 right, −1 left; 0: a straight hit. */
  readonly thinSide: 1 | -1 | 0;
}

export function missAt(task: Task, kit: Kit, stroke: Stroke): MissOrLost {
  const arrival = task.arrivalAt(kit, stroke);
  return typeof arrival === 'string' ? arrival : arrival.miss;
}

/** Whether the ball goes. */
export function goes(miss: MissOrLost): miss is number {
  return typeof miss === 'number' && Math.abs(miss) <= 1;
}
