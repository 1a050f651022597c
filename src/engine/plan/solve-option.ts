import { directPot } from '../goal/direct-pot';
import type { PositionShot } from '../goal/position-shot';
import type { Target } from '../goal/target';
import type { Task } from '../goal/task';
import type { KitAlong } from '../kit/kit-along';
import type { KitSpread } from '../kit/kit-spread';
import type { StrokeProfile } from '../room/stroke-profile';
import type { Stroke } from '../stroke/stroke';
import { type LinearChance, linearChance } from './linear-chance';
import type { OptionStroke } from './option-grid';

/** A ball, where it has to go, and who plays it with what. */
export interface OptionQuestion {
  readonly distanceM: number;
  readonly cutRad: number;
  readonly target: Target;
  readonly kit: KitAlong;
  readonly spread: KitSpread;
  readonly profile: StrokeProfile;
}

/** What is asked of a shot from a position, by whoever plays it so well with what is known so well. */
export function questionOf(
  { distanceM, cutRad, target }: PositionShot,
  kit: KitAlong,
  spread: KitSpread,
  profile: StrokeProfile,
): OptionQuestion {
  return { distanceM, cutRad, target, kit, spread, profile };
}

/** One way to play it, with its aim. */
export interface Option {
  /** Its place in the grid it came from. */
  readonly place: number;
  /** With its aim. */
  readonly stroke: Stroke;
  readonly chance: LinearChance;
}

/** What the options of a question are to do. */
export function taskOf({ distanceM, cutRad, target, kit }: OptionQuestion): Task {
  const reach = target.kind === 'mouth' ? { objectDistanceM: target.distanceM } : {};
  return directPot({ distanceM, cutRad, ...reach }, target, kit.ballRadiusM);
}

/**
 * Null where no aim sends the ball there.
 *
 * @param task that of the question
 */
export function solveOption(
  { kit, profile, spread }: OptionQuestion,
  task: Task,
  { side, height, elevationRad, speedMps }: OptionStroke,
  place: number,
): Option | null {
  const [aimRad] = task.aims(kit, { side, height, elevationRad, speedMps });
  if (aimRad === undefined) return null;
  const stroke = { aimRad, side, height, elevationRad, speedMps };
  const chance = linearChance(task, kit, stroke, profile, spread);
  return chance && { place, stroke, chance };
}
