import { SPIN_SHARE, SURFACE_RESPONSE } from '../ball/inertia';

/**
 * Where and how a ball touches a cushion. The line from the ball's centre to the nose points into
 * the cushion and rises by an angle θ; the rest is seen along the rail, into it and up.
 */
export interface CushionContact {
  /** sin θ, + where the nose is above the ball's centre. */
  readonly sinRise: number;
  readonly cosRise: number;
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

/** What nose and bed give a ball: impulses over its mass, m/s. */
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

export function newPush(): Push {
  return { nose: 0, noseAlong: 0, noseUp: 0, bed: 0, bedAlong: 0, bedInto: 0 };
}

/** Friction at the two contacts hangs together; each round settles one, then the other. */
const ROUNDS = 2;

/**
 * Fills in what comes with an increment of the nose's impulse. Friction acts against the slip
 * half-way through the increment, and never gives more than what ends the slip.
 *
 * @param push the nose's impulse, and a first guess of the bed's friction
 */
export function fillPush(push: Push, slips: Slips, contact: CushionContact): void {
  const isHeld = contact.overBed && slips.rising <= 0;
  for (let round = 0; round < ROUNDS; round++) {
    rubNose(push, slips, contact, isHeld);
    const up = push.nose * contact.sinRise - push.noseUp * contact.cosRise;
    push.bed = isHeld && up > 0 ? up : 0;
    rubBed(push, slips, contact);
  }
}

/** Friction at the nose. What it lifts, a bed that holds the ball up need no longer carry. */
function rubNose(push: Push, slips: Slips, contact: CushionContact, isHeld: boolean): void {
  const { sinRise, cosRise } = contact;
  const carried = isHeld ? push.nose * sinRise : 0;
  const along = (1 - SPIN_SHARE * sinRise) * push.bedAlong;
  const up = (SPIN_SHARE - sinRise) * push.bedInto + cosRise * carried;
  const give = isHeld ? SURFACE_RESPONSE - cosRise * cosRise : SURFACE_RESPONSE;
  const [a, b] = rub(
    slips.noseAlong,
    slips.noseUp,
    along,
    up,
    give,
    contact.noseFriction * push.nose,
  );
  push.noseAlong = a;
  push.noseUp = b;
}

function rubBed(push: Push, slips: Slips, contact: CushionContact): void {
  const { sinRise, cosRise } = contact;
  const along = (1 - SPIN_SHARE * sinRise) * push.noseAlong;
  const into = (SPIN_SHARE - sinRise) * push.noseUp - cosRise * push.nose;
  const most = contact.bedFriction * push.bed;
  const [a, b] = rub(slips.bedAlong, slips.bedInto, along, into, SURFACE_RESPONSE, most);
  push.bedAlong = a;
  push.bedInto = b;
}

/**
 * Friction of one contact over an increment that would change its slip (a, b) by (changeA, changeB)
 * without friction.
 *
 * @param giveB change of b by a unit of friction; of a it is {@link SURFACE_RESPONSE}
 * @param most what friction can give at most
 */
function rub(
  a: number,
  b: number,
  changeA: number,
  changeB: number,
  giveB: number,
  most: number,
): readonly [number, number] {
  const stopA = -(a + changeA) / SURFACE_RESPONSE;
  const stopB = -(b + changeB) / giveB;
  if (stopA * stopA + stopB * stopB <= most * most) return [stopA, stopB];
  const halfA = a + changeA / 2;
  const halfB = b + changeB / 2;
  const slip = Math.sqrt(halfA * halfA + halfB * halfB);
  if (slip === 0) return [0, 0];
  // Where the slip gives more one way than the other, its own friction turns it a little.
  const left = Math.max(0, slip - (most * (SURFACE_RESPONSE + giveB)) / 4);
  const againstA = halfA / (left + (SURFACE_RESPONSE * most) / 2);
  const againstB = halfB / (left + (giveB * most) / 2);
  const scale = -most / Math.sqrt(againstA * againstA + againstB * againstB);
  return [scale * againstA, scale * againstB];
}

/** Speed into the nose that a push takes away, m/s. */
export function closingLost(push: Push, { sinRise, cosRise }: CushionContact): number {
  return push.nose - sinRise * push.bed - cosRise * push.bedInto;
}

/** Upward speed that a push gives, m/s: none while the bed carries the ball. */
export function risingGained(push: Push, { sinRise, cosRise }: CushionContact): number {
  return push.bed > 0 ? 0 : cosRise * push.noseUp - sinRise * push.nose;
}

/** Applies a share of a push to the slips. Source: rigid-body mechanics; exact. */
export function applyPush(slips: Slips, push: Push, contact: CushionContact, share: number): void {
  const { sinRise, cosRise } = contact;
  const along = 1 - SPIN_SHARE * sinRise;
  const across = SPIN_SHARE - sinRise;
  slips.closing -= share * closingLost(push, contact);
  slips.rising += share * risingGained(push, contact);
  slips.noseAlong += share * (SURFACE_RESPONSE * push.noseAlong + along * push.bedAlong);
  slips.noseUp +=
    share * (SURFACE_RESPONSE * push.noseUp + across * push.bedInto + cosRise * push.bed);
  slips.bedAlong += share * (SURFACE_RESPONSE * push.bedAlong + along * push.noseAlong);
  slips.bedInto +=
    share * (SURFACE_RESPONSE * push.bedInto + across * push.noseUp - cosRise * push.nose);
}

/** Adds a share of a push to the sum of all so far. */
export function addPush(sum: Push, push: Push, share: number): void {
  sum.nose += share * push.nose;
  sum.noseAlong += share * push.noseAlong;
  sum.noseUp += share * push.noseUp;
  sum.bed += share * push.bed;
  sum.bedAlong += share * push.bedAlong;
  sum.bedInto += share * push.bedInto;
}

/** The push that comes with another impulse of the nose, were all else in proportion. */
export function resize(push: Push, nose: number): void {
  const scale = push.nose > 0 ? nose / push.nose : 0;
  push.nose = nose;
  push.bedAlong *= scale;
  push.bedInto *= scale;
}
