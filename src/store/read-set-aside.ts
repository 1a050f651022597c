import { isPlainObject } from './mend';
import { SHELF_NAMES } from './shelf-names';
import type { SetAside } from './store-port';

const STORES: readonly SetAside['store'][] = [
  ...SHELF_NAMES,
  'attempts',
  'positions',
  'desk',
  'set-aside',
];
const REASONS: readonly SetAside['reason'][] = [
  'not-a-record',
  'no-id',
  'nothing-readable',
  'unreadable',
  'repaired',
  'noted',
];

/** Whether a row says what was set aside, where it lay and why. */
export function isSetAside(was: unknown): was is SetAside {
  if (!isPlainObject(was) || !('raw' in was)) return false;
  return STORES.some((name) => name === was.store) && REASONS.some((name) => name === was.reason);
}

/** What was set aside earlier; a row that does not say so counts as set aside itself. */
export function readSetAside(was: unknown): SetAside {
  return isSetAside(was) ? was : { store: 'set-aside', raw: was, reason: 'not-a-record' };
}
