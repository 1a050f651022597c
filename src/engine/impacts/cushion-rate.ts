import { SURFACE_RESPONSE } from '../ball/inertia';
import type { CushionContact, Push } from './cushion-push';

/**
 * Writes what nose and bed give per impulse of the nose into `rate`, for a slip over the nose
 * (along, up) and over the bed (along, into). Friction acts against the slip as it is; one that has
 * ended is held at none, as far as friction goes.
 *
 * @param isHeld whether the bed holds the ball up
 * @param endedMps a slip no larger than this has ended
 */
export function fillRate(
  rate: Push,
  noseAlong: number,
  noseUp: number,
  bedAlong: number,
  bedInto: number,
  contact: CushionContact,
  isHeld: boolean,
  endedMps: number,
): void {
  const slip = Math.sqrt(noseAlong * noseAlong + noseUp * noseUp);
  const hasEnded = slip <= endedMps;
  const against = hasEnded ? 0 : -contact.noseFriction / slip;
  rate.noseAlong = against * noseAlong;
  rate.noseUp = against * noseUp;
  rate.bed = 0;
  rate.bedAlong = 0;
  rate.bedInto = 0;
  if (!isHeld) return;
  const bedSlip = Math.sqrt(bedAlong * bedAlong + bedInto * bedInto);
  if (bedSlip <= endedMps) {
    beginBed(rate, contact, hasEnded);
    return;
  }
  if (hasEnded) holdNose(rate, contact, bedAlong / bedSlip, bedInto / bedSlip);
  rate.bed = carriedByBed(rate.noseUp, contact);
  const againstBed = (-contact.bedFriction * rate.bed) / bedSlip;
  rate.bedAlong = againstBed * bedAlong;
  rate.bedInto = againstBed * bedInto;
}

/** A slip over the bed begins the way in which the nose drives it, or friction holds it. */
function beginBed(rate: Push, contact: CushionContact, isNoseEnded: boolean): void {
  const along = contact.alongShare * rate.noseAlong;
  const into = contact.acrossShare * rate.noseUp - contact.cosRise;
  const drive = Math.sqrt(along * along + into * into);
  if (isNoseEnded) holdNose(rate, contact, along / drive, into / drive);
  rate.bed = carriedByBed(rate.noseUp, contact);
  const taken = Math.min((contact.bedFriction * rate.bed) / drive, 1 / SURFACE_RESPONSE);
  rate.bedAlong = -taken * along;
  rate.bedInto = -taken * into;
}

/** What the nose presses down the bed carries, but for what friction at the nose lifts. */
export function carriedByBed(noseUp: number, { sinRise, cosRise }: CushionContact): number {
  return Math.max(0, sinRise - cosRise * noseUp);
}

/**
 * Friction that holds the slip over the nose at none while the bed's acts against a slip in the
 * direction (along, into); all there is of it, where that is not enough.
 */
function holdNose(rate: Push, contact: CushionContact, along: number, into: number): void {
  const { sinRise, cosRise, bedFriction, noseFriction } = contact;
  const lift = cosRise - contact.acrossShare * bedFriction * into;
  const up = (-lift * sinRise) / (SURFACE_RESPONSE - lift * cosRise);
  const bed = sinRise - cosRise * up;
  const aside = (contact.alongShare * bedFriction * bed * along) / SURFACE_RESPONSE;
  const needed = Math.sqrt(aside * aside + up * up);
  const share = needed > noseFriction ? noseFriction / needed : 1;
  rate.noseAlong = share * aside;
  rate.noseUp = share * up;
}
