import { play } from '../direct/contact';
import type { Layout } from '../direct/layout';
import type { Shot } from '../direct/shot';
import type { Kit } from '../kit/kit';
import { comesToRest } from '../motion/roll';
import { isBeyondMiscue } from '../stroke/miscue-limit';
import { type Arrival, type Lost, objectBallArrival } from './object-ball-miss';
import type { Target } from './target';

/** What a player controls in a stroke; the layout of the balls is what it is. */
export type StrokeInput = 'aimRad' | 'speedMps' | 'side' | 'height' | 'elevationRad';

/** A stroke at a layout. */
export type StrokeInputs = { readonly [I in StrokeInput]: number };

/** What the five inputs were when the aim was solved. */
export function inputsOf(shot: Shot, aimRad: number): StrokeInputs {
  const { speedMps, side, height, elevationRad } = shot;
  return { aimRad, speedMps, side, height, elevationRad };
}

/** A miss as a share of what the target allows, right +; or why there is none. */
export type MissOrLost = number | Lost | 'miscue';

/** The layout, the target and the kit held fast: only the stroke varies. */
export interface HeldShot {
  readonly shot: Shot;
  readonly layout: Layout;
  readonly kit: Kit;
  readonly target: Target;
}

/** Plays a stroke at the layout and tells the object ball's miss. */
export function missOfStroke(held: HeldShot, inputs: StrokeInputs): MissOrLost {
  const arrival = arrivalOfStroke(held, inputs);
  return typeof arrival === 'string' ? arrival : arrival.miss;
}

/** Plays a stroke at the layout and tells how the object ball comes to its target. */
export function arrivalOfStroke(held: HeldShot, inputs: StrokeInputs): Arrival | Lost | 'miscue' {
  if (isBeyondMiscue(inputs.side, inputs.height)) return 'miscue';
  const { shot, layout, kit, target } = held;
  // A kit drawn from little knowledge may be one on which nothing stops: it is no shot at all.
  if (!comesToRest(kit)) return 'short';
  const { aimRad, ...stroke } = inputs;
  const played = play({ ...shot, ...stroke }, layout, kit, aimRad);
  return objectBallArrival(played, shot.cutRad, target, kit);
}

/** Whether the ball goes. */
export function goes(miss: MissOrLost): miss is number {
  return typeof miss === 'number' && Math.abs(miss) <= 1;
}
