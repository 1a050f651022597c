import { SURFACE_RESPONSE } from '../ball/inertia';
import type { CushionContact } from './cushion-contact';
import type { Slip } from './cushion-slip';

/**
 * Fills in how hard the bed is pressed and what both contacts rub. Friction acts against the slip as
 * it is; one that has ended is held at none, as far as friction goes.
 *
 * @param isHeld whether the bed holds the ball up
 */
export function rub(nose: Slip, bed: Slip, contact: CushionContact, isHeld: boolean): void {
  const isNoseEnded = nose.hasEnded;
  if (isNoseEnded) nose.rubNone();
  else nose.rubAgainst();
  if (!isHeld) {
    bed.pressed = 0;
    bed.rubNone();
  } else if (bed.hasEnded) {
    beginBed(nose, bed, contact, isNoseEnded);
  } else {
    if (isNoseEnded) holdNose(nose, bed, bed, contact);
    press(nose, bed, contact);
    bed.rubAgainst();
  }
}

/** What the nose presses down the bed carries, but for what friction at the nose lifts. */
export function press(nose: Slip, bed: Slip, { sinRise, cosRise }: CushionContact): void {
  bed.pressed = Math.max(0, sinRise - cosRise * nose.rubAcross);
}

/** What all there is changes both slips by, per impulse. Source: rigid-body mechanics; exact. */
export function change(nose: Slip, bed: Slip, contact: CushionContact): void {
  const { cosRise, alongShare, acrossShare } = contact;
  nose.changeAlong = SURFACE_RESPONSE * nose.rubAlong + alongShare * bed.rubAlong;
  nose.changeAcross =
    SURFACE_RESPONSE * nose.rubAcross + acrossShare * bed.rubAcross + cosRise * bed.pressed;
  bed.changeAlong = SURFACE_RESPONSE * bed.rubAlong + alongShare * nose.rubAlong;
  bed.changeAcross = SURFACE_RESPONSE * bed.rubAcross + acrossShare * nose.rubAcross - cosRise;
  // What friction lifts, a bed that holds the ball up need no longer carry.
  nose.giveAcross = SURFACE_RESPONSE - (bed.pressed > 0 ? cosRise * cosRise : 0);
}

/** A slip over the bed begins the way in which the nose drives it, or friction holds it. */
function beginBed(nose: Slip, bed: Slip, contact: CushionContact, isNoseEnded: boolean): void {
  const along = contact.alongShare * nose.rubAlong;
  const across = contact.acrossShare * nose.rubAcross - contact.cosRise;
  const drive = Math.sqrt(along * along + across * across);
  if (isNoseEnded) holdNose(nose, bed, { along, across }, contact);
  press(nose, bed, contact);
  const taken = Math.min(bed.most / drive, 1 / SURFACE_RESPONSE);
  bed.rubAlong = -taken * along;
  bed.rubAcross = -taken * across;
}

/**
 * Friction that holds the slip over the nose at none while the bed's acts against a slip in a
 * direction; all there is of it, where that is not enough.
 */
function holdNose(
  nose: Slip,
  bed: Slip,
  way: Pick<Slip, 'along' | 'across'>,
  contact: CushionContact,
): void {
  const { sinRise, cosRise, alongShare, acrossShare } = contact;
  const size = Math.sqrt(way.along * way.along + way.across * way.across);
  const lift = cosRise - (acrossShare * bed.friction * way.across) / size;
  const up = (-lift * sinRise) / (SURFACE_RESPONSE - lift * cosRise);
  const pressed = sinRise - cosRise * up;
  const aside = (alongShare * bed.friction * pressed * way.along) / size / SURFACE_RESPONSE;
  const needed = Math.sqrt(aside * aside + up * up);
  const share = needed > nose.most ? nose.most / needed : 1;
  nose.rubAlong = share * aside;
  nose.rubAcross = share * up;
}
