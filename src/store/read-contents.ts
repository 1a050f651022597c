import type { Attempt } from './attempt';
import { DESK_KEY } from './database-schema';
import { DEFAULT_DESK } from './default-desk';
import { isPlainObject } from './mend';
import { orderAttempts } from './order-attempts';
import { orderPositions } from './order-positions';
import { parseAttempt } from './parse-attempt';
import { parseDesk } from './parse-desk';
import { parsePosition } from './parse-position';
import { type RawStores, type ReadRows, readRows } from './read-rows';
import { readSetAside } from './read-set-aside';
import { readShelf } from './read-shelf';
import type { Desk, ShelfName, Shelves } from './records';
import type { SavedPosition } from './saved-position';
import { SHELF_NAMES } from './shelf-names';
import type { Contents, Loaded, Quarantined, SetAside, ShelfContents } from './store-port';

/** Everything made valid, and what must be written to make the store agree. */
export interface ReadContents {
  readonly loaded: Loaded;
  readonly shelves: { readonly [S in ShelfName]: ReadRows<Shelves[S]> };
  readonly attempts: ReadRows<Attempt>;
  readonly positions: ReadRows<SavedPosition>;
  /** Null where the saved desk stands. */
  readonly deskToPut: Desk | null;
  readonly toSetAside: readonly SetAside[];
}

/** Parses all there is. Nothing found at all is a first visit: the demo catalogue and desk. */
export function readContents(raw: RawStores): ReadContents {
  const shelves = {
    cues: readShelf('cues', raw.cues ?? []),
    cloths: readShelf('cloths', raw.cloths ?? []),
    balls: readShelf('balls', raw.balls ?? []),
    tables: readShelf('tables', raw.tables ?? []),
  };
  const attempts = readRows('attempts', raw.attempts ?? [], parseAttempt);
  const positions = readRows('positions', raw.positions ?? [], parsePosition);
  const contents: ShelfContents = {
    cues: shelves.cues.records,
    cloths: shelves.cloths.records,
    balls: shelves.balls.records,
    tables: shelves.tables.records,
  };
  const desk = readDesk(raw.desk?.find(({ key }) => key === DESK_KEY)?.value, contents);
  const read = [...SHELF_NAMES.map((shelf) => shelves[shelf]), attempts, positions, desk];
  return {
    loaded: {
      desk: desk.desk,
      shelves: contents,
      attempts: orderAttempts(attempts.records),
      positions: orderPositions(positions.records),
      repairs: read.flatMap(({ repairs }) => repairs),
      quarantined: read.flatMap(({ quarantined }) => quarantined),
    },
    shelves,
    attempts,
    positions,
    deskToPut: desk.isStored ? null : desk.desk,
    toSetAside: read.flatMap(({ toSetAside }) => toSetAside),
  };
}

/** The same as it will be once what is to be written has been. */
export function contentsOf(raw: RawStores, { loaded, toSetAside }: ReadContents): Contents {
  const { desk, shelves, attempts, positions } = loaded;
  const earlier = (raw['set-aside'] ?? []).map(({ value }) => readSetAside(value));
  return { desk, shelves, attempts, positions, setAside: [...earlier, ...toSetAside] };
}

function readDesk(found: unknown, contents: ShelfContents) {
  const quarantined: Quarantined[] = [];
  if (found !== undefined && !isPlainObject(found)) {
    quarantined.push({ store: 'desk', raw: found, reason: 'not-a-record' });
  }
  const isThere = isPlainObject(found);
  const { desk, repairs } = parseDesk(isThere ? found : DEFAULT_DESK, contents);
  const wasMended = isThere && repairs.length > 0;
  const toSetAside: SetAside[] = [...quarantined];
  if (wasMended) toSetAside.push({ store: 'desk', raw: found, reason: 'repaired' });
  return { desk, repairs, quarantined, toSetAside, isStored: isThere && !wasMended };
}
