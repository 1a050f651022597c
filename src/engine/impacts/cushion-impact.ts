import { SURFACE_RESPONSE } from '../ball/inertia';
import { endSlip, smoothIncrement } from './cushion-increment';
import {
  addPush,
  type CushionContact,
  fillChange,
  newPush,
  type Push,
  type Slips,
} from './cushion-push';
import { fillRate } from './cushion-rate';

/** A slip, or a speed upward, of at most this share of the closing speed of first touch is none. */
const NONE = 1e-10;
/** Within this share of it the rates of an increment's beginning are those of all of it. */
const TINY = 1e-4;
/** Far above what any impact takes. */
const MOST_INCREMENTS = 5000;

/** Energy that the cushion has taken up, over the ball's mass, m²/s². */
interface Stored {
  now: number;
  /** When it was compressed most. */
  most: number;
}

/**
 * The sum of what nose and bed give a ball from first touch until the cushion has given back e² of
 * the work done on it. `slips` are those of first touch, and become those of parting.
 *
 * The nose's impulse takes the place of time. Increments are of fourth order where slips turn
 * smoothly; where one begins or reverses they are small, and where one ends, one ends with it.
 */
export function cushionImpact(slips: Slips, contact: CushionContact): Push {
  const wholeMps = (1 + contact.restitution) * slips.closing;
  const tinyMps = TINY * slips.closing;
  const noneMps = NONE * slips.closing;
  const stored: Stored = { now: 0, most: 0 };
  const sum = newPush(0);
  const rate = newPush(1);
  const change: Slips = { ...slips };
  for (let count = 0; count < MOST_INCREMENTS; count++) {
    const isHeld = contact.overBed && slips.rising <= 0;
    const { closing, noseAlong, noseUp, bedAlong, bedInto } = slips;
    fillRate(rate, noseAlong, noseUp, bedAlong, bedInto, contact, isHeld, noneMps);
    fillChange(change, rate, contact);
    const most = Math.min(
      smoothIncrement(rate, slips, change, contact, wholeMps, noneMps),
      untilLanding(slips, change, contact),
    );
    const isOnWayIn = closing > tinyMps;
    const next = isOnWayIn
      ? untilDeepest(closing, change)
      : untilParting(closing, change, contact.restitution, stored);
    if (!isOnWayIn && next <= Math.min(most, tinyMps)) {
      addPush(sum, slips, rate, change, next);
      break;
    }
    const within = Math.min(most, next);
    const toEnd = endSlip(rate, slips, change, contact, within, wholeMps);
    const by = Math.min(within, toEnd);
    const isEnd = toEnd <= within;
    const mean = isEnd ? Number.NaN : fillMeanRate(rate, slips, contact, isHeld, noneMps, by);
    fillChange(change, rate, contact);
    stored.now += by * (isEnd ? closing + (by * change.closing) / 2 : mean);
    addPush(sum, slips, rate, change, by);
    if (contact.overBed && slips.rising <= noneMps) slips.rising = 0;
  }
  return sum;
}

/** The impulse until the ball goes in no deeper, if all goes on as now; likewise below. */
function untilDeepest(closing: number, change: Slips): number {
  return change.closing < 0 ? -closing / change.closing : Number.POSITIVE_INFINITY;
}

/** Until the cushion has given back all that it will. */
function untilParting(closing: number, change: Slips, restitution: number, stored: Stored): number {
  const lost = -change.closing;
  if (!(lost > 0)) return Number.POSITIVE_INFINITY;
  const toCome = closing > 0 ? (closing * closing) / (2 * lost) : 0;
  stored.most = Math.max(stored.most, stored.now + toCome);
  const kept = (1 - restitution * restitution) * stored.most;
  const left = closing * closing + 2 * lost * (stored.now - kept);
  return Math.max(0, (closing + Math.sqrt(Math.max(0, left))) / lost);
}

/** Until a ball that had risen is back on the bed. */
function untilLanding(slips: Slips, change: Slips, contact: CushionContact): number {
  const isLanding = contact.overBed && slips.rising > 0 && change.rising < 0;
  return isLanding ? -slips.rising / change.rising : Number.POSITIVE_INFINITY;
}

/**
 * Turns the rate of an increment's beginning into the mean over it, by the rule of Runge and Kutta.
 *
 * @returns the mean closing speed, m/s
 */
function fillMeanRate(
  rate: Push,
  slips: Slips,
  contact: CushionContact,
  isHeld: boolean,
  noneMps: number,
  by: number,
): number {
  const { sinRise, cosRise, alongShare, acrossShare } = contact;
  const { closing } = slips;
  let [a, up, bed, c, d] = [rate.noseAlong, rate.noseUp, rate.bed, rate.bedAlong, rate.bedInto];
  let sum = closing;
  for (let stage = 1; stage <= 3; stage++) {
    const ahead = stage < 3 ? by / 2 : by;
    const weight = stage < 3 ? 2 : 1;
    const { noseAlong, noseUp, bed: carried, bedAlong, bedInto } = rate;
    sum += weight * (closing + ahead * (sinRise * carried + cosRise * bedInto - 1));
    fillRate(
      rate,
      slips.noseAlong + ahead * (SURFACE_RESPONSE * noseAlong + alongShare * bedAlong),
      slips.noseUp +
        ahead * (SURFACE_RESPONSE * noseUp + acrossShare * bedInto + cosRise * carried),
      slips.bedAlong + ahead * (SURFACE_RESPONSE * bedAlong + alongShare * noseAlong),
      slips.bedInto + ahead * (SURFACE_RESPONSE * bedInto + acrossShare * noseUp - cosRise),
      contact,
      isHeld,
      noneMps,
    );
    a += weight * rate.noseAlong;
    up += weight * rate.noseUp;
    bed += weight * rate.bed;
    c += weight * rate.bedAlong;
    d += weight * rate.bedInto;
  }
  rate.noseAlong = a / 6;
  rate.noseUp = up / 6;
  rate.bed = bed / 6;
  rate.bedAlong = c / 6;
  rate.bedInto = d / 6;
  return sum / 6;
}
