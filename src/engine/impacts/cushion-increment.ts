import { SURFACE_RESPONSE } from '../ball/inertia';
import type { CushionContact, Push, Slips } from './cushion-push';
import { carriedByBed } from './cushion-rate';

/** Increments are shares of the impulse that a plain impact takes: at most this … */
const MOST_SHARE = 1 / 6;
/** … and at least this where a slip turns fast; where one begins, this. */
const LEAST_SHARE = 1 / 512;
const FIRST_SHARE = 1 / 128;
/** A slip that would end within such a share ends in one increment. */
const LAST_SHARE = 1 / 128;
/** An increment turns a slip by this at most, rad, … */
const TURN_RAD = 1 / 5;
/** … takes at most this share of it away, and friction alone would take at most this. */
const SHRINK = 1 / 2;
const RUB = 3 / 5;
/** A change of a slip below this, per impulse, is rounding. */
const NO_CHANGE = 1e-10;

/**
 * How large an increment of the nose's impulse may be, m/s, for slips that hardly turn meanwhile.
 *
 * @param change what `rate` changes the slips by, per impulse of the nose
 * @param wholeMps the impulse of a plain impact
 * @param endedMps a slip no larger than this has ended
 */
export function smoothIncrement(
  rate: Push,
  slips: Slips,
  change: Slips,
  contact: CushionContact,
  wholeMps: number,
  endedMps: number,
): number {
  const even = (MOST_SHARE * wholeMps) / (change.closing < 0 ? -change.closing : 1);
  const { noseAlong: a, noseUp: b } = slips;
  const { noseFriction: friction } = contact;
  const nose = smoothFor(a, b, change.noseAlong, change.noseUp, friction, even, wholeMps, endedMps);
  if (!(rate.bed > 0)) return nose;
  const { bedAlong: c, bedInto: d } = slips;
  const ofBed = contact.bedFriction * rate.bed;
  return smoothFor(c, d, change.bedAlong, change.bedInto, ofBed, nose, wholeMps, endedMps);
}

/** The same for one slip, (a, b), which friction takes away at most so much per impulse. */
function smoothFor(
  a: number,
  b: number,
  changeA: number,
  changeB: number,
  friction: number,
  most: number,
  wholeMps: number,
  endedMps: number,
): number {
  const square = a * a + b * b;
  if (square <= endedMps * endedMps) {
    const begins = Math.abs(changeA) + Math.abs(changeB) > NO_CHANGE;
    return begins ? Math.min(most, FIRST_SHARE * wholeMps) : most;
  }
  const slip = Math.sqrt(square);
  const rub = SURFACE_RESPONSE * friction;
  const turning = Math.abs(a * changeB - b * changeA);
  const shrinking = -(a * changeA + b * changeB);
  let smooth = rub * most > RUB * slip ? (RUB * slip) / rub : most;
  if (turning * smooth > TURN_RAD * square) smooth = (TURN_RAD * square) / turning;
  if (shrinking * smooth > SHRINK * square) smooth = (SHRINK * square) / shrinking;
  return Math.min(most, Math.max(LEAST_SHARE * wholeMps, smooth));
}

/**
 * Turns `rate` into what ends a slip, where an increment no larger than `within` does: how much
 * friction that takes is known, however the slip turns meanwhile.
 *
 * @returns the increment, m/s; Infinity where there is none, and `rate` is as it was
 */
export function endSlip(
  rate: Push,
  slips: Slips,
  change: Slips,
  contact: CushionContact,
  within: number,
  wholeMps: number,
): number {
  const most = Math.min(within, LAST_SHARE * wholeMps);
  const ofNose = endNoseSlip(rate, slips, change, contact, most);
  if (ofNose <= most || !(rate.bed > 0)) return ofNose;
  return endBedSlip(rate, slips, change, contact.bedFriction * rate.bed, most);
}

function endNoseSlip(
  rate: Push,
  slips: Slips,
  change: Slips,
  contact: CushionContact,
  most: number,
): number {
  const { noseAlong, noseUp } = slips;
  const shrinking = -(noseAlong * change.noseAlong + noseUp * change.noseUp);
  if (!(shrinking * most > noseAlong * noseAlong + noseUp * noseUp))
    return Number.POSITIVE_INFINITY;
  // What friction lifts, a bed that holds the ball up need no longer carry.
  const give = SURFACE_RESPONSE - (rate.bed > 0 ? contact.cosRise * contact.cosRise : 0);
  const [a, b] = [noseAlong / SURFACE_RESPONSE, noseUp / give];
  const perA = change.noseAlong / SURFACE_RESPONSE - rate.noseAlong;
  const perB = change.noseUp / give - rate.noseUp;
  const increment = untilHeld(a, b, perA, perB, contact.noseFriction);
  if (!(increment <= most)) return Number.POSITIVE_INFINITY;
  rate.noseAlong = -a / increment - perA;
  rate.noseUp = -b / increment - perB;
  if (rate.bed > 0) rate.bed = carriedByBed(rate.noseUp, contact);
  return increment;
}

function endBedSlip(
  rate: Push,
  slips: Slips,
  change: Slips,
  friction: number,
  most: number,
): number {
  const { bedAlong, bedInto } = slips;
  const shrinking = -(bedAlong * change.bedAlong + bedInto * change.bedInto);
  if (!(shrinking * most > bedAlong * bedAlong + bedInto * bedInto))
    return Number.POSITIVE_INFINITY;
  const [a, b] = [bedAlong / SURFACE_RESPONSE, bedInto / SURFACE_RESPONSE];
  const perA = change.bedAlong / SURFACE_RESPONSE - rate.bedAlong;
  const perB = change.bedInto / SURFACE_RESPONSE - rate.bedInto;
  const increment = untilHeld(a, b, perA, perB, friction);
  if (!(increment <= most)) return Number.POSITIVE_INFINITY;
  rate.bedAlong = -a / increment - perA;
  rate.bedInto = -b / increment - perB;
  return increment;
}

/**
 * The impulse t, m/s, after which friction of t times `friction` has made up for (a, b) and for t
 * times (perA, perB); Infinity where it never does.
 */
function untilHeld(a: number, b: number, perA: number, perB: number, friction: number): number {
  const spare = friction * friction - perA * perA - perB * perB;
  if (!(spare > 0)) return Number.POSITIVE_INFINITY;
  const both = a * perA + b * perB;
  return (both + Math.sqrt(both * both + spare * (a * a + b * b))) / spare;
}
