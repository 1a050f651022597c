import { DEFAULT_DESK } from './default-desk';
import { isPlainObject } from './mend';
import { parseDesk } from './parse-desk';
import { type RawRow, type ReadShelf, readShelf } from './read-shelf';
import type { Desk, ShelfName } from './records';
import { SHELF_NAMES } from './shelf-names';
import type { Loaded, Quarantined, SetAside, ShelfContents } from './store-port';

/** Everything as it was found. */
export interface RawContents {
  readonly rows: { readonly [S in ShelfName]: readonly RawRow[] };
  /** Undefined on a first visit. */
  readonly desk: unknown;
  /** A desk noted as the page went away, or undefined; it is newer than the saved one. */
  readonly deskDraft: unknown;
}

/** Everything made valid, and what must be written to make the store agree. */
export interface ReadContents {
  readonly loaded: Loaded;
  readonly shelves: { readonly [S in ShelfName]: ReadShelf<S> };
  /** Null where the saved desk stands. */
  readonly deskToPut: Desk | null;
  readonly toSetAside: readonly SetAside[];
}

/** Parses all there is. Nothing found at all is a first visit: the demo catalogue and desk. */
export function readContents(raw: RawContents): ReadContents {
  const shelves = {
    cues: readShelf('cues', raw.rows.cues),
    cloths: readShelf('cloths', raw.rows.cloths),
    balls: readShelf('balls', raw.rows.balls),
    tables: readShelf('tables', raw.rows.tables),
  };
  const contents: ShelfContents = {
    cues: shelves.cues.records,
    cloths: shelves.cloths.records,
    balls: shelves.balls.records,
    tables: shelves.tables.records,
  };
  const desk = readDesk(raw, contents);
  const read = SHELF_NAMES.map((shelf) => shelves[shelf]);
  return {
    loaded: {
      desk: desk.desk,
      shelves: contents,
      repairs: [...read.flatMap(({ repairs }) => repairs), ...desk.repairs],
      quarantined: [...read.flatMap(({ quarantined }) => quarantined), ...desk.quarantined],
    },
    shelves,
    deskToPut: desk.isStored ? null : desk.desk,
    toSetAside: [...read.flatMap(({ toSetAside }) => toSetAside), ...desk.toSetAside],
  };
}

function readDesk(raw: RawContents, contents: ShelfContents) {
  const isDraft = isPlainObject(raw.deskDraft);
  const found = isDraft ? raw.deskDraft : raw.desk;
  const quarantined: Quarantined[] = [];
  if (raw.desk !== undefined && !isPlainObject(raw.desk)) {
    quarantined.push({ store: 'desk', raw: raw.desk, reason: 'not-a-record' });
  }
  const isThere = isPlainObject(found);
  const { desk, repairs } = parseDesk(isThere ? found : DEFAULT_DESK, contents);
  const wasMended = isThere && repairs.length > 0;
  const toSetAside: SetAside[] = [...quarantined];
  if (wasMended) toSetAside.push({ store: 'desk', raw: found, reason: 'repaired' });
  return { desk, repairs, quarantined, toSetAside, isStored: isThere && !isDraft && !wasMended };
}
