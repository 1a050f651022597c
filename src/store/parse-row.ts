import { isPlainObject } from './mend';
import { parseAttempt } from './parse-attempt';
import { mendDesk } from './parse-desk';
import { parsePosition } from './parse-position';
import { parseRecord } from './parse-record';
import type { StoreName } from './store-port';
import type { KeptRow } from './tabs/elsewhere';

/** A valid row out of anything found in a store; undefined where it is beyond repair. */
export function parseRow(store: StoreName, raw: unknown): KeptRow | undefined {
  // The record that a desk's choice names may be on its way from another tab.
  if (store === 'desk') return isPlainObject(raw) ? mendDesk(raw, '', () => {}) : undefined;
  const parsed = parseOf(store)(raw);
  return parsed.ok ? parsed.record : undefined;
}

function parseOf(store: Exclude<StoreName, 'desk'>) {
  if (store === 'attempts') return parseAttempt;
  if (store === 'positions') return parsePosition;
  return (raw: unknown) => parseRecord(store, raw);
}
