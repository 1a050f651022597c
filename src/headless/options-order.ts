import type { WaysOrder } from '../engine/worth/worthy-ways';
import { type DoorRefusal, notTaken } from './door-refusal';
import type { Fields } from './json-fields';

/** What a list of ways is ordered by, and whether safeties are on it. */
export interface Listing {
  readonly order: WaysOrder;
  readonly hasSafeties: boolean;
}

/** How the kinds name it. */
export const SAFETY = 'safety';

const ORDERS = ['worth', 'goes'] as const;

/**
 * Reads how the list is to be ordered, or tells why it cannot be taken. Safeties are on it where the kinds
 * name them, or where no kinds are named and the order is by worth.
 *
 * @param isOnePot a ball and a pocket are named: who does that asks how it goes
 */
export function parseListing(fields: Fields, isOnePot: boolean): Listing | DoorRefusal {
  const { order: given, kinds, zone } = fields;
  const usual = isOnePot || zone !== undefined ? 'goes' : 'worth';
  const order = given === undefined ? usual : ORDERS.find((name) => name === given);
  if (order === undefined) return notTaken('order', `one of ${ORDERS.join(', ')}`);
  const isNamed = Array.isArray(kinds) && kinds.includes(SAFETY);
  return { order, hasSafeties: kinds === undefined ? order === 'worth' : isNamed };
}
