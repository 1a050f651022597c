import type { KeptRow, StoreName } from './contents';
import { isPlainObject } from './mend';
import { mendDesk } from './parse-desk';
import { LISTS } from './stores';

/** A valid row out of anything found in a store; undefined where it is beyond repair. */
export function parseRow(store: StoreName, raw: unknown): KeptRow | undefined {
  // The record that a desk's choice names may be on its way from another tab.
  if (store === 'desk') return isPlainObject(raw) ? mendDesk(raw, '', () => {}) : undefined;
  const parsed = LISTS[store].parse(raw);
  return parsed.ok ? parsed.record : undefined;
}
