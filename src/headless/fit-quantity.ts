import type { Estimate } from '../engine/fit/estimates';
import type { Unknown } from '../engine/fit/fit-layout';
import type { FitQuantity, Part } from '../engine/fit/fit-question';
import { USUAL_SPEEDS } from '../engine/fit/shots-to-do';
import { SPEED_WORDS, type SpeedWord } from '../engine/fit/trial-shot';
import type { Kit } from '../engine/kit/kit';

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

const DEGREES = 180 / Math.PI;

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
    sd: sd * scale * (isShare(quantity) ? value : 1),
    sdBefore: sdBefore * scale * (isShare(quantity) ? middleOf(quantity, before) : 1),
  };
}

function isWord(quantity: FitQuantity): quantity is SpeedWord {
  return SPEED_WORDS.some((word) => word === quantity);
}

/** From the fit's unit to the door's. */
function scaleOf(quantity: FitQuantity): number {
  if (quantity === 'aimBias') return DEGREES;
  return isWord(quantity) ? USUAL_SPEEDS[quantity] : 1;
}

type Absolute = 'aimBias' | 'ballFriction' | 'bedSlopeAlong' | 'bedSlopeRight';
type Shared = Exclude<FitQuantity, Absolute>;
const ABSOLUTE: readonly FitQuantity[] = [
  'aimBias',
  'ballFriction',
  'bedSlopeAlong',
  'bedSlopeRight',
] satisfies Absolute[];

/** Whether the fit tells its deviations as a share of it, and the door in its own unit. */
function isShare(quantity: FitQuantity): quantity is Shared {
  return !ABSOLUTE.includes(quantity);
}

function middleOf(quantity: Shared, before: Kit): number {
  return isWord(quantity) ? 1 : before[quantity];
}
