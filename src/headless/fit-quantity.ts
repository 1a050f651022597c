import type { Estimate } from '../engine/fit/estimates';
import type { Unknown } from '../engine/fit/fit-layout';
import type { FitQuantity, PlayerQuantity } from '../engine/fit/fit-question';
import { USUAL_SPEEDS } from '../engine/fit/trials/set-up';
import { SPEED_WORDS, type SpeedWord } from '../engine/fit/trials/trial';
import type { Kit } from '../engine/kit/kit';
import type { Part } from '../engine/kit/kit-numbers';
import { quantityIn, spreadUnit } from '../engine/kit/kit-spread';
import { DEG_PER_RAD } from '../engine/numerics/angle';

/** A quantity, and whose it is: a cue's, a cloth's, some balls', a table's or the player's. */
export interface ToldQuantity {
  readonly part: Part | 'player';
  /** The name of that cue, cloth, ball set or table. */
  readonly of: string;
  readonly quantity: string;
}

/** What is known of a quantity, in the units in which a request tells a kit and its `kitSd`. */
export interface ToldEstimate extends ToldQuantity {
  readonly value: number;
  readonly sd: number;
  readonly sdBefore: number;
}

/** A quantity under its name at the door, which carries its unit. */
export function toldQuantity({ part, owner, quantity }: Unknown): ToldQuantity {
  return { part, of: owner, quantity: quantityName(quantity) };
}

/** The name at the door: the player's own carry their unit. */
export function quantityName(quantity: FitQuantity): string {
  if (quantity === 'aimBias') return 'aimBiasDeg';
  return isWord(quantity) ? `${quantity}Mps` : quantity;
}

/** @param before the kit before anything was read */
export function toldEstimate(estimate: Estimate, before: Kit): ToldEstimate {
  const { value, sd, sdBefore, quantity } = estimate;
  const scale = scaleOf(quantity);
  return {
    ...toldQuantity(estimate),
    value: value * scale,
    sd: sd * scale * unitOf(quantity, value),
    sdBefore: sdBefore * scale * unitOf(quantity, middleOf(quantity, before)),
  };
}

function isWord(quantity: FitQuantity): quantity is SpeedWord {
  return SPEED_WORDS.some((word) => word === quantity);
}

function isOfPlayer(quantity: FitQuantity): quantity is PlayerQuantity {
  return quantity === 'aimBias' || isWord(quantity);
}

/** From the fit's unit to the door's. */
function scaleOf(quantity: FitQuantity): number {
  if (quantity === 'aimBias') return DEG_PER_RAD;
  return isWord(quantity) ? USUAL_SPEEDS[quantity] : 1;
}

/** What the fit's deviation of a quantity is worth in the unit of its value. */
function unitOf(quantity: FitQuantity, value: number): number {
  if (isOfPlayer(quantity)) return isWord(quantity) ? value : 1;
  return spreadUnit(quantity, value);
}

function middleOf(quantity: FitQuantity, before: Kit): number {
  return isOfPlayer(quantity) ? 1 : quantityIn(before, quantity);
}
