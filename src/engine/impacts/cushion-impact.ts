import { SURFACE_RESPONSE } from '../ball/inertia';
import type { CushionContact, Push, Slips } from './cushion-contact';
import { change, press, rub } from './cushion-rub';
import { NONE, Slip } from './cushion-slip';

/** An increment is at most this share of the impulse that a plain impact takes. */
const MOST_SHARE = 1 / 6;
/** Within this share of it the rates of an increment's beginning are those of all of it. */
const TINY = 1e-4;
/** Far above what any impact takes. */
const MOST_INCREMENTS = 5000;

/**
 * A ball that meets a cushion: what nose and bed give it from first touch until the cushion has given
 * back e² of the work done on it.
 *
 * The nose's impulse takes the place of time. Increments are of fourth order where slips turn
 * smoothly; where one begins or reverses they are small, and where one ends, one ends with it.
 */
export class CushionImpact {
  /** The sum so far. */
  readonly push: Push = { nose: 0, noseAlong: 0, noseUp: 0, bed: 0, bedAlong: 0, bedInto: 0 };
  /** Speed upward, m/s. */
  rising: number;
  private closing: number;
  private readonly nose: Slip;
  private readonly bed: Slip;
  /** Slips part of the way through an increment, once any are looked at. */
  private noseAhead: Slip | null = null;
  private bedAhead: Slip | null = null;
  /** What it all takes of the closing speed, per impulse. */
  private lost = 0;
  private isHeld = false;
  private readonly wholeMps: number;
  private readonly tinyMps: number;
  /** Energy that the cushion has taken up, over the ball's mass, m²/s²: now, and at most. */
  private stored = 0;
  private mostStored = 0;

  constructor(
    slips: Slips,
    private readonly contact: CushionContact,
  ) {
    this.wholeMps = (1 + contact.restitution) * slips.closing;
    this.tinyMps = TINY * slips.closing;
    this.closing = slips.closing;
    this.rising = slips.rising;
    this.nose = new Slip(contact.noseFriction, this.wholeMps);
    this.bed = new Slip(contact.bedFriction, this.wholeMps);
    this.nose.along = slips.noseAlong;
    this.nose.across = slips.noseUp;
    this.bed.along = slips.bedAlong;
    this.bed.across = slips.bedInto;
  }

  /** Goes on to where ball and cushion part. */
  run(): void {
    for (let count = 0; count < MOST_INCREMENTS; count++) if (this.goOn()) return;
  }

  /** Plays an increment; true after the last. */
  private goOn(): boolean {
    const { contact, nose, bed } = this;
    this.isHeld = contact.overBed && this.rising <= 0;
    rub(nose, bed, contact, this.isHeld);
    change(nose, bed, contact);
    this.setLost();
    let within = (MOST_SHARE * this.wholeMps) / (this.lost > 0 ? this.lost : 1);
    within = this.untilLanding(nose.smoothWithin(within));
    if (bed.pressed > 0) within = bed.smoothWithin(within);
    const toNext = this.closing > this.tinyMps ? this.untilDeepest() : this.untilParting();
    const isLast = this.closing <= this.tinyMps && toNext <= Math.min(within, this.tinyMps);
    within = Math.min(within, toNext);
    if (isLast) this.add(within, this.closing);
    else this.pushOn(within);
    return isLast;
  }

  private pushOn(within: number): void {
    const { contact, nose, bed } = this;
    const toNoseEnd = nose.endWithin(within);
    const isNoseEnding = toNoseEnd <= within;
    const toBedEnd =
      bed.pressed > 0 && !isNoseEnding ? bed.endWithin(within) : Number.POSITIVE_INFINITY;
    if (isNoseEnding || toBedEnd <= within) {
      if (isNoseEnding && bed.pressed > 0) press(nose, bed, contact);
      const by = Math.min(toNoseEnd, toBedEnd);
      this.setLost();
      this.add(by, this.closing - (by * this.lost) / 2);
    } else if (this.isHeld && !nose.hasEnded && !bed.hasEnded) this.slideOn(within);
    else this.rubOn(within);
  }

  /** Adds an increment of the rates as they are; the closing speed is its mean over it, m/s. */
  private add(by: number, closing: number): void {
    const { push, nose, bed, contact } = this;
    change(nose, bed, contact);
    this.setLost();
    push.nose += by;
    push.noseAlong += by * nose.rubAlong;
    push.noseUp += by * nose.rubAcross;
    push.bed += by * bed.pressed;
    push.bedAlong += by * bed.rubAlong;
    push.bedInto += by * bed.rubAcross;
    nose.along += by * nose.changeAlong;
    nose.across += by * nose.changeAcross;
    bed.along += by * bed.changeAlong;
    bed.across += by * bed.changeAcross;
    this.stored += by * closing;
    this.closing -= by * this.lost;
    if (!(bed.pressed > 0)) this.rising += by * this.risingGained();
    if (contact.overBed && this.rising <= NONE * this.wholeMps) this.rising = 0;
  }

  private setLost(): void {
    const { bed, contact } = this;
    this.lost = 1 - contact.sinRise * bed.pressed - contact.cosRise * bed.rubAcross;
  }

  /** Upward speed, per impulse, where the bed does not carry the ball. */
  private risingGained(): number {
    return this.contact.cosRise * this.nose.rubAcross - this.contact.sinRise;
  }

  /** The increment, within one, in which a ball that had risen comes back to the bed. */
  private untilLanding(within: number): number {
    if (!this.contact.overBed || !(this.rising > 0)) return within;
    const gained = this.risingGained();
    return gained < 0 ? Math.min(within, -this.rising / gained) : within;
  }

  /** The increment until the ball goes in no deeper, if all goes on as now; likewise below. */
  private untilDeepest(): number {
    return this.lost > 0 ? this.closing / this.lost : Number.POSITIVE_INFINITY;
  }

  /** Until the cushion has given back all that it will. */
  private untilParting(): number {
    const { closing, lost, contact } = this;
    if (!(lost > 0)) return Number.POSITIVE_INFINITY;
    const toCome = closing > 0 ? (closing * closing) / (2 * lost) : 0;
    this.mostStored = Math.max(this.mostStored, this.stored + toCome);
    const kept = (1 - contact.restitution * contact.restitution) * this.mostStored;
    const left = closing * closing + 2 * lost * (this.stored - kept);
    return Math.max(0, (closing + Math.sqrt(Math.max(0, left))) / lost);
  }

  /** An increment in which both slips go on, by the rule of Runge and Kutta. */
  private slideOn(by: number): void {
    const { nose, bed, closing } = this;
    const { sinRise, cosRise, alongShare, acrossShare, noseFriction, bedFriction } = this.contact;
    let { rubAlong: a, rubAcross: b } = nose;
    let { rubAlong: c, rubAcross: d, pressed } = bed;
    let meanA = a;
    let meanB = b;
    let meanC = c;
    let meanD = d;
    let meanPressed = pressed;
    let meanClosing = closing;
    for (let stage = 1; stage <= 3; stage++) {
      const ahead = stage < 3 ? by / 2 : by;
      const weight = stage < 3 ? 2 : 1;
      meanClosing += weight * (closing - ahead * (1 - sinRise * pressed - cosRise * d));
      const noseAlong = nose.along + ahead * (SURFACE_RESPONSE * a + alongShare * c);
      const noseUp =
        nose.across + ahead * (SURFACE_RESPONSE * b + acrossShare * d + cosRise * pressed);
      const bedAlong = bed.along + ahead * (SURFACE_RESPONSE * c + alongShare * a);
      const bedInto = bed.across + ahead * (SURFACE_RESPONSE * d + acrossShare * b - cosRise);
      const against = -noseFriction / Math.sqrt(noseAlong * noseAlong + noseUp * noseUp);
      a = against * noseAlong;
      b = against * noseUp;
      pressed = Math.max(0, sinRise - cosRise * b);
      const onBed = (-bedFriction * pressed) / Math.sqrt(bedAlong * bedAlong + bedInto * bedInto);
      c = onBed * bedAlong;
      d = onBed * bedInto;
      meanA += weight * a;
      meanB += weight * b;
      meanC += weight * c;
      meanD += weight * d;
      meanPressed += weight * pressed;
    }
    nose.rubAlong = meanA / 6;
    nose.rubAcross = meanB / 6;
    bed.rubAlong = meanC / 6;
    bed.rubAcross = meanD / 6;
    bed.pressed = meanPressed / 6;
    this.add(by, meanClosing / 6);
  }

  /** The same whatever the slips do. */
  private rubOn(by: number): void {
    const { nose, bed, contact, closing } = this;
    const noseAhead = this.noseAhead ?? new Slip(nose.friction, this.wholeMps);
    const bedAhead = this.bedAhead ?? new Slip(bed.friction, this.wholeMps);
    this.noseAhead = noseAhead;
    this.bedAhead = bedAhead;
    let meanA = nose.rubAlong;
    let meanB = nose.rubAcross;
    let meanC = bed.rubAlong;
    let meanD = bed.rubAcross;
    let meanPressed = bed.pressed;
    let meanClosing = closing;
    let from = nose;
    let fromBed = bed;
    for (let stage = 1; stage <= 3; stage++) {
      const ahead = stage < 3 ? by / 2 : by;
      const weight = stage < 3 ? 2 : 1;
      const lost = 1 - contact.sinRise * fromBed.pressed - contact.cosRise * fromBed.rubAcross;
      meanClosing += weight * (closing - ahead * lost);
      noseAhead.along = nose.along + ahead * from.changeAlong;
      noseAhead.across = nose.across + ahead * from.changeAcross;
      bedAhead.along = bed.along + ahead * fromBed.changeAlong;
      bedAhead.across = bed.across + ahead * fromBed.changeAcross;
      rub(noseAhead, bedAhead, contact, this.isHeld);
      change(noseAhead, bedAhead, contact);
      meanA += weight * noseAhead.rubAlong;
      meanB += weight * noseAhead.rubAcross;
      meanC += weight * bedAhead.rubAlong;
      meanD += weight * bedAhead.rubAcross;
      meanPressed += weight * bedAhead.pressed;
      from = noseAhead;
      fromBed = bedAhead;
    }
    nose.rubAlong = meanA / 6;
    nose.rubAcross = meanB / 6;
    bed.rubAlong = meanC / 6;
    bed.rubAcross = meanD / 6;
    bed.pressed = meanPressed / 6;
    this.add(by, meanClosing / 6);
  }
}
