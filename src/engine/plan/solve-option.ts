import { layoutOf } from '../direct/layout';
import type { Shot } from '../direct/shot';
import { solveAim } from '../direct/solve-aim';
import { inputsOf } from '../goal/held-shot';
import type { Target } from '../goal/target';
import type { Kit } from '../kit/kit';
import type { KitSpread } from '../kit/kit-spread';
import type { StrokeProfile } from '../room/stroke-profile';
import { type LinearChance, linearChance } from './linear-chance';
import type { OptionStroke } from './option-grid';

/** A ball, where it has to go, and who plays it with what. */
export interface OptionQuestion {
  readonly distanceM: number;
  readonly cutRad: number;
  readonly target: Target;
  readonly kit: Kit;
  readonly spread: KitSpread;
  readonly profile: StrokeProfile;
}

/** One way to play it, with its aim. */
export interface Option {
  /** Its place in the grid it came from. */
  readonly place: number;
  readonly shot: Shot;
  readonly aimRad: number;
  readonly chance: LinearChance;
}

/** Null where no aim sends the ball there. */
export function solveOption(
  question: OptionQuestion,
  stroke: OptionStroke,
  place: number,
): Option | null {
  const { distanceM, cutRad, target, kit, profile, spread } = question;
  const reach = target.kind === 'mouth' ? { objectDistanceM: target.distanceM } : {};
  const shot: Shot = { distanceM, cutRad, ...stroke, ...reach };
  const answer = solveAim(shot, kit);
  if (!answer.ok) return null;
  const held = { shot, kit, target, layout: layoutOf(shot, kit.ballRadiusM) };
  const chance = linearChance(held, inputsOf(shot, answer.aimRad), profile, spread);
  return chance && { place, shot, aimRad: answer.aimRad, chance };
}
