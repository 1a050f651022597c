import type { ContentStore } from '../contents';
import { DESK_KEY } from '../database-schema';
import { isPlainObject } from '../mend';
import { MOST_OF_A_KIND } from '../most-of-a-kind';
import type { RawRow, RawStores } from '../read-rows';
import { CONTENT_STORES, isSetAside, STORES } from '../stores';
import { type Refused, refuse } from './backup-format';
import { readValue, writeValue } from './value-text';

/** A line of a file, its number counted from 1. */
export interface Line {
  readonly number: number;
  readonly text: string;
}

interface Row {
  readonly store: ContentStore;
  readonly value: unknown;
}

export type Gathered = { readonly ok: true; readonly raw: RawStores } | Refused;

/**
 * Sorts the rows of a file by store, as a database would give them, but keyed by their line.
 * @param isPart whether stores that are never empty may be missing
 */
export function gatherRows(lines: readonly Line[], lastLine: number, isPart: boolean): Gathered {
  const raw = Object.fromEntries(
    CONTENT_STORES.map((name): [ContentStore, RawRow[]] => [name, []]),
  ) as Record<ContentStore, RawRow[]>;
  const linesByKey = new Map<string, number>();
  for (const { number, text } of lines) {
    const row = readRow(text);
    if (!row) return refuse(number, { reason: 'no-row' });
    const key = keyOf(row, number);
    const earlier = linesByKey.get(key);
    if (earlier !== undefined) return refuse(number, { reason: 'repeated', earlier });
    linesByKey.set(key, number);
    if (row.store !== 'set-aside' && raw[row.store].length === MOST_OF_A_KIND) {
      return refuse(number, { reason: 'too-many' });
    }
    raw[row.store].push({ key: row.store === 'desk' ? DESK_KEY : number, value: row.value });
  }
  const missing = CONTENT_STORES.find(
    (name) => !isPart && STORES[name].isNeverEmpty && raw[name].length === 0,
  );
  return missing ? refuse(lastLine, { reason: 'missing', store: missing }) : { ok: true, raw };
}

/** Null where a line is no row of any store, or has none of the shape all rows of its store have. */
function readRow(text: string): Row | null {
  const read = readValue(text);
  if (!read.ok || !isPlainObject(read.value) || !('row' in read.value)) return null;
  const { store: name, row: value } = read.value;
  const store = CONTENT_STORES.find((known) => known === name);
  if (!store) return null;
  return (store === 'set-aside' ? isSetAside(value) : isPlainObject(value))
    ? { store, value }
    : null;
}

/** What no two rows may share: what was set aside is numbered by the database. */
function keyOf({ store, value }: Row, line: number): string {
  if (store === 'desk') return store;
  if (store === 'set-aside') return `${store} ${line}`;
  return `${store} ${writeValue(isPlainObject(value) ? value.id : null)}`;
}
