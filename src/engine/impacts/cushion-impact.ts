import { LEAST_OF_EVEN, nextNose } from './cushion-increment';
import {
  addPush,
  applyPush,
  type CushionContact,
  closingLost,
  fillPush,
  newPush,
  type Push,
  resize,
  risingGained,
  type Slips,
} from './cushion-push';

/** Increments that a plain impact takes. What they cost in accuracy: see `afterCushion`. */
const INCREMENTS = 32;

/** Energy that the cushion has taken up, over the ball's mass, m²/s². */
interface Stored {
  now: number;
  /** When it was compressed most. */
  most: number;
}

/**
 * The sum of what nose and bed give a ball from first touch until the cushion has given back e² of
 * the work done on it. `slips` are those of first touch, and become those of parting.
 */
export function cushionImpact(
  slips: Slips,
  contact: CushionContact,
  increments = INCREMENTS,
): Push {
  const evenMps = ((1 + contact.restitution) * slips.closing) / increments;
  const cap = (4 / LEAST_OF_EVEN) * increments;
  const stored: Stored = { now: 0, most: 0 };
  const sum = newPush();
  const push = newPush();
  push.nose = LEAST_OF_EVEN * evenMps;
  for (let count = 0; count < cap; count++) {
    fillPush(push, slips, contact);
    const landing = shareToLanding(push, slips, contact);
    const parting = shareToParting(push, slips, contact, stored);
    const share = Math.min(1, landing, parting);
    const before = { ...slips };
    stored.now += share * workDone(push, slips, contact, share);
    applyPush(slips, push, contact, share);
    addPush(sum, push, share);
    if (parting <= share) break;
    if (landing <= share) slips.rising = 0;
    resize(push, nextNose(push, share, before, slips, contact, evenMps));
  }
  return sum;
}

/** Work on the cushion by a share of the push, over that share. Exact, as the push is steady. */
function workDone(push: Push, slips: Slips, contact: CushionContact, share: number): number {
  return push.nose * (slips.closing - (closingLost(push, contact) * share) / 2);
}

/** Share of the push that brings a ball that had risen back to the bed. */
function shareToLanding(push: Push, slips: Slips, contact: CushionContact): number {
  const lost = -risingGained(push, contact);
  const isLanding = contact.overBed && slips.rising > 0 && lost > 0;
  return isLanding ? slips.rising / lost : Number.POSITIVE_INFINITY;
}

/** Share of the push after which the cushion has given back all that it will. */
function shareToParting(push: Push, slips: Slips, contact: CushionContact, stored: Stored): number {
  const lost = closingLost(push, contact);
  if (!(lost > 0)) return Number.POSITIVE_INFINITY;
  const { closing } = slips;
  const deepest = Math.min(1, Math.max(0, closing / lost));
  const most = stored.now + deepest * workDone(push, slips, contact, deepest);
  stored.most = Math.max(stored.most, most);
  const kept = (1 - contact.restitution * contact.restitution) * stored.most;
  const left = closing * closing + 2 * (lost / push.nose) * (stored.now - kept);
  return Math.max(0, (closing + Math.sqrt(Math.max(0, left))) / lost);
}
