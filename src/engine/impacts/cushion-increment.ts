import { type CushionContact, closingLost, type Push, type Slips } from './cushion-push';

/** As a slip ends, its direction turns fast: an increment changes it by at most this share of it … */
const SHARE_OF_SLIP = 1 / 4;

/** … but is never less than this share of an even one. */
export const LEAST_OF_EVEN = 1 / 16;

/**
 * How large an impulse of the nose, m/s, should come next, going by what a share of the last push
 * did: it changed the slips from `before` to `after`.
 *
 * @param evenMps how much of the closing speed an even increment takes
 */
export function nextNose(
  push: Push,
  share: number,
  before: Slips,
  after: Slips,
  contact: CushionContact,
  evenMps: number,
): number {
  const lost = closingLost(push, contact);
  const even = lost > 0 ? (evenMps * push.nose) / lost : evenMps;
  const along = after.noseAlong - before.noseAlong;
  const up = after.noseUp - before.noseUp;
  const ofNose = timesToTurn(after.noseAlong, after.noseUp, along, up);
  const alongBed = after.bedAlong - before.bedAlong;
  const intoBed = after.bedInto - before.bedInto;
  const ofBed =
    push.bed > 0 ? timesToTurn(after.bedAlong, after.bedInto, alongBed, intoBed) : ofNose;
  const gentle = SHARE_OF_SLIP * Math.min(ofNose, ofBed) * share * push.nose;
  return Math.min(even, Math.max(LEAST_OF_EVEN * even, gentle));
}

/** How many times a change of a slip (a, b) it takes to make up the slip. */
function timesToTurn(a: number, b: number, changeA: number, changeB: number): number {
  const change = changeA * changeA + changeB * changeB;
  return change > 0 ? Math.sqrt((a * a + b * b) / change) : Number.POSITIVE_INFINITY;
}
