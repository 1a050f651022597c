import { SURFACE_RESPONSE } from '../ball/inertia';

/**
 * Where and how a ball touches a cushion. The line from the ball's centre to the nose points into
 * the cushion and rises by an angle θ; the rest is seen along the rail, into it and up.
 */
export interface CushionContact {
  /** sin θ, + where the nose is above the ball's centre. */
  readonly sinRise: number;
  readonly cosRise: number;
  /** What friction at one contact changes the other's slip by, along the rail and across. */
  readonly alongShare: number;
  readonly acrossShare: number;
  readonly restitution: number;
  readonly noseFriction: number;
  readonly bedFriction: number;
  /** Whether the bed is right under the ball, to hold it up while it does not rise. */
  readonly overBed: boolean;
}

/** How a ball moves against what it touches, m/s. Together as good as its velocity and spin. */
export interface Slips {
  /** Speed into the nose, along the line from the ball's centre. */
  closing: number;
  /** Speed upward. */
  rising: number;
  /** Slip over the nose, along the rail and up the ball's face. */
  noseAlong: number;
  noseUp: number;
  /** Slip over the bed, along the rail and into it. */
  bedAlong: number;
  bedInto: number;
}

/** What nose and bed give a ball: impulses over its mass, m/s; or each per impulse of the nose. */
export interface Push {
  /** Along the line from the nose to the ball's centre, and friction square to it. */
  nose: number;
  noseAlong: number;
  noseUp: number;
  /** Upward, and friction square to it. */
  bed: number;
  bedAlong: number;
  bedInto: number;
}

export function newPush(nose: number): Push {
  return { nose, noseAlong: 0, noseUp: 0, bed: 0, bedAlong: 0, bedInto: 0 };
}

/**
 * Writes what a push changes the slips by into `change`. A bed that carries the ball keeps it from
 * rising. Source: rigid-body mechanics; exact.
 */
export function fillChange(change: Slips, push: Push, contact: CushionContact): void {
  const { sinRise, cosRise, alongShare, acrossShare } = contact;
  const { nose, noseAlong, noseUp, bed, bedAlong, bedInto } = push;
  change.closing = sinRise * bed + cosRise * bedInto - nose;
  change.rising = bed > 0 ? 0 : cosRise * noseUp - sinRise * nose;
  change.noseAlong = SURFACE_RESPONSE * noseAlong + alongShare * bedAlong;
  change.noseUp = SURFACE_RESPONSE * noseUp + acrossShare * bedInto + cosRise * bed;
  change.bedAlong = SURFACE_RESPONSE * bedAlong + alongShare * noseAlong;
  change.bedInto = SURFACE_RESPONSE * bedInto + acrossShare * noseUp - cosRise * nose;
}

/** Adds so much of a push to the sum of all so far, and of its change to the slips. */
export function addPush(sum: Push, slips: Slips, push: Push, change: Slips, much: number): void {
  sum.nose += much * push.nose;
  sum.noseAlong += much * push.noseAlong;
  sum.noseUp += much * push.noseUp;
  sum.bed += much * push.bed;
  sum.bedAlong += much * push.bedAlong;
  sum.bedInto += much * push.bedInto;
  slips.closing += much * change.closing;
  slips.rising += much * change.rising;
  slips.noseAlong += much * change.noseAlong;
  slips.noseUp += much * change.noseUp;
  slips.bedAlong += much * change.bedAlong;
  slips.bedInto += much * change.bedInto;
}
