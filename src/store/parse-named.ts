import { isWithin } from '../engine/numerics/range';
import type { ListName, ParsedRow, Quarantined, Repair } from './contents';
import {
  isPlainObject,
  type Mend,
  mendAbsent,
  mendLine,
  mendList,
  mendNumber,
  mendObject,
  mendOrNone,
  mendWord,
} from './mend';
import { TIME_RANGE_MS } from './record-ranges';
import type { Change, Named } from './records';

/** A longer name would not fit a phone's line. */
export const LONGEST_NAME = 60;

/** Ids are short; anything longer was never one. */
const LONGEST_ID = 200;

/** More changes than anyone makes to one cue. */
const MOST_CHANGES = 500;

/**
 * A valid row out of anything found in a list, with what had to be mended. Beyond repair is something
 * without fields, or without an id.
 * @param mendOf how to mend a row, or why it is beyond repair
 */
export function parseWithId<T>(
  store: ListName,
  raw: unknown,
  mendOf: (row: Record<string, unknown>, id: string) => Mend<T> | Quarantined['reason'],
): ParsedRow<T> {
  if (!isPlainObject(raw)) return { ok: false, reason: 'not-a-record' };
  const id = raw.id;
  if (!isId(id)) return { ok: false, reason: 'no-id' };
  const mend = mendOf(raw, id);
  if (typeof mend === 'string') return { ok: false, reason: mend };
  const repairs: Repair[] = [];
  const record = mend(raw, '', (field, was, now) => {
    repairs.push({ store, id, field, was, now });
  });
  return { ok: true, record, repairs };
}

/** The key a record is stored under; it is checked before anything is mended. */
const keepId: Mend<string> = (was) => String(was);

/** Whether something can be the key of a record. */
export function isId(was: unknown): was is string {
  return typeof was === 'string' && was !== '' && was.length <= LONGEST_ID;
}

/** A change of unknown time cannot tell earlier readings from later ones. */
const canBeDated = (was: unknown): boolean =>
  isPlainObject(was) && isWithin(TIME_RANGE_MS, was.atMs);

const mendChanges: Mend<readonly Change[]> = mendList(
  MOST_CHANGES,
  canBeDated,
  mendObject<Change>({
    atMs: mendNumber(TIME_RANGE_MS, 0),
    what: mendLine(LONGEST_NAME, 'Something changed'),
  }),
);

/** Mends what every record has. Unknown origins count as the person's own. */
export function mendNamed(nameless: string): { readonly [K in keyof Named]: Mend<Named[K]> } {
  return {
    id: keepId,
    name: mendLine(LONGEST_NAME, nameless),
    origin: mendWord(['invented', 'by-hand'], 'by-hand'),
    changes: mendAbsent([], mendChanges),
    like: mendAbsent(null, mendOrNone(isId, String)),
  };
}
