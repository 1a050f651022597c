import type { Contents, ListName, Quarantined, Rows, SetAside } from './contents';
import { DESK_KEY } from './database-schema';
import { DEFAULT_DESK } from './default-desk';
import { isPlainObject } from './mend';
import { type ChosenFrom, parseDesk } from './parse-desk';
import { playerOfFormerDesk } from './parse-player';
import { type RawRow, type RawStores, type ReadRows, readRows } from './read-rows';
import type { Desk } from './records';
import type { Loaded } from './store-port';
import { LIST_NAMES, LISTS, type OfLists, ofLists, readSetAside } from './stores';

/** Everything made valid, and what must be written to make the store agree. */
export interface ReadContents {
  readonly loaded: Loaded;
  readonly lists: OfLists<'read'>;
  /** Null where the saved desk stands. */
  readonly deskToPut: Desk | null;
  readonly toSetAside: readonly SetAside[];
}

/** Parses all there is. Nothing found at all is a first visit: the demo catalogue and desk. */
export function readContents(raw: RawStores): ReadContents {
  const kept = raw.desk?.find(({ key }) => key === DESK_KEY)?.value;
  const before = withFormerPlayer(raw, kept);
  const lists = ofLists<'read'>((name) => readList(name, before[name] ?? []));
  const records = ofLists<'rows'>((name) => lists[name].records);
  const desk = readDesk(kept, records);
  const read = [...LIST_NAMES.map((name) => lists[name]), desk];
  return {
    loaded: {
      ...records,
      desk: desk.desk,
      repairs: read.flatMap(({ repairs }) => repairs),
      quarantined: read.flatMap(({ quarantined }) => quarantined),
    },
    lists,
    deskToPut: desk.isStored ? null : desk.desk,
    toSetAside: read.flatMap(({ toSetAside }) => toSetAside),
  };
}

/** What is from before there were players has the one that its desk told of. */
function withFormerPlayer(raw: RawStores, desk: unknown): RawStores {
  if (raw.players !== undefined && raw.players.length > 0) return raw;
  const player = playerOfFormerDesk(desk);
  return player === null ? raw : { ...raw, players: [{ key: player.id, value: player }] };
}

/** The same as it will be once what is to be written has been. */
export function contentsOf(raw: RawStores, { loaded, toSetAside }: ReadContents): Contents {
  const { repairs: _repairs, quarantined: _quarantined, ...contents } = loaded;
  const earlier = (raw['set-aside'] ?? []).map(({ value }) => readSetAside(value));
  return { ...contents, setAside: [...earlier, ...toSetAside] };
}

/** Parses a list. One with nothing left gets what it began with, so that no shelf is empty. */
function readList<L extends ListName>(name: L, rows: readonly RawRow[]): ReadRows<Rows[L]> {
  const { parse, order, atFirst } = LISTS[name];
  const read = readRows<Rows[L]>(name, rows, parse);
  if (read.records.length > 0) return { ...read, records: order(read.records) };
  const first = atFirst();
  return { ...read, records: order(first), toPut: first };
}

function readDesk(found: unknown, contents: ChosenFrom) {
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
