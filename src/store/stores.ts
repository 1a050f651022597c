import { writeValue } from './backup/value-text';
import type {
  ContentRows,
  ContentStore,
  Contents,
  KeptRow,
  ListName,
  ParsedRow,
  Rows,
  SetAside,
  StoreName,
} from './contents';
import { DEMO_CATALOGUE } from './demo-catalogue';
import { isPlainObject } from './mend';
import { orderAttempts, orderPlayed, orderPlayers, orderPositions, orderShelf } from './order-rows';
import { parseAttempt } from './parse-attempt';
import { mendDesk } from './parse-desk';
import { parsePlayed } from './parse-played';
import { firstPlayer, parsePlayer } from './parse-player';
import { parsePosition } from './parse-position';
import { parseRecord } from './parse-record';
import type { ReadRows } from './read-rows';
import type { ShelfName, Shelves } from './records';
import { copyName, copyRecord } from './shelf-changes';
import type { PlannedRows } from './store-port';

/** What tells the rows of a store from those of others. */
interface Store<T> {
  /** What tells a row from the others of its store. */
  idOf(row: T): string;
  /** What a person calls it, or what that is found by. */
  nameOf(row: T): string;
  /** Whether, in a merge, a row that is here is kept over the backup's that differs. */
  readonly staysInMerge: (here: T, there: T) => boolean;
  /** In an order that is the same on every device. */
  inBackup(rows: readonly T[]): readonly T[];
  /** Whether there is always a row, so that a backup without any is none. */
  readonly isNeverEmpty: boolean;
}

/** A store with any number of rows. */
interface List<T> extends Store<T> {
  parse(raw: unknown): ParsedRow<T>;
  /** As it is shown. */
  order(rows: readonly T[]): readonly T[];
  /** Whether the newest are shown last. */
  readonly isNewestLast: boolean;
  /** What stands in an empty one. */
  atFirst(): readonly T[];
  /** Whether it holds a reading or a number of the person's own. */
  isOwn(row: T): boolean;
  /** What another tab made of a row, to be kept beside it under this id. */
  asCopy(row: T, id: string): T;
}

/** Said of what another tab had made of a row. */
const OTHER_TAB = 'other tab';

const never = () => false;

const wasChangedLater = (
  here: { readonly changedAtMs: number },
  there: { readonly changedAtMs: number },
) => here.changedAtMs > there.changedAtMs;

/**
 * Every list, in the order in which lists are read, written and told of. Whatever is done with all
 * of them goes by these rows: a list is added here and to `Rows`, and made by a migration.
 */
export const LISTS: { readonly [L in ListName]: List<Rows[L]> } = {
  cues: shelf('cues'),
  cloths: shelf('cloths'),
  balls: shelf('balls'),
  tables: shelf('tables'),
  attempts: {
    parse: parseAttempt,
    order: orderAttempts,
    isNewestLast: true,
    atFirst: () => [],
    isNeverEmpty: false,
    idOf: ({ id }) => id,
    nameOf: ({ shot }) => shot.trial,
    // The one that has come further.
    staysInMerge: (here, there) => here.stepsDone.length > there.stepsDone.length,
    // As they are shown: the same on every device already.
    inBackup: (rows) => rows,
    isOwn: ({ readings }) => Object.keys(readings).length > 0,
    // A reading counts once.
    asCopy: (attempt, id) => ({ ...attempt, id, isStruckOut: true }),
  },
  positions: {
    parse: parsePosition,
    order: orderPositions,
    isNewestLast: false,
    atFirst: () => [],
    isNeverEmpty: false,
    idOf: ({ id }) => id,
    nameOf: ({ name }) => name,
    staysInMerge: wasChangedLater,
    inBackup: byId,
    isOwn: never,
    asCopy: (row, id) => ({ ...row, id, name: copyName(row.name, [row.name], OTHER_TAB) }),
  },
  players: {
    parse: parsePlayer,
    order: orderPlayers,
    isNewestLast: false,
    atFirst: () => [firstPlayer()],
    // Backups from before there were players have none.
    isNeverEmpty: false,
    idOf: ({ id }) => id,
    nameOf: ({ name }) => name,
    staysInMerge: wasChangedLater,
    inBackup: byId,
    isOwn: ({ madeOf10 }) => madeOf10 !== null,
    asCopy: (row, id) => ({ ...row, id, name: copyName(row.name, [row.name], OTHER_TAB) }),
  },
  played: {
    parse: parsePlayed,
    order: orderPlayed,
    isNewestLast: true,
    atFirst: () => [],
    isNeverEmpty: false,
    idOf: ({ id }) => id,
    nameOf: ({ result }) => result,
    staysInMerge: never,
    inBackup: (rows) => rows,
    isOwn: () => true,
    // A shot counts once.
    asCopy: (row, id) => ({ ...row, id, asMeant: false }),
  },
};

/** Every store, in the same order. */
export const STORES: { readonly [S in ContentStore]: Store<ContentRows[S]> } = {
  ...LISTS,
  desk: {
    isNeverEmpty: true,
    idOf: () => 'desk',
    nameOf: () => 'desk',
    staysInMerge: () => true,
    inBackup: (rows) => rows,
  },
  'set-aside': {
    isNeverEmpty: false,
    // It is known by all that it says.
    idOf: (row) => writeValue(row),
    nameOf: ({ store }) => store,
    staysInMerge: never,
    inBackup: (rows) => rows,
  },
};

function shelf<S extends ShelfName>(name: S): List<Shelves[S]> {
  return {
    parse: (raw) => parseRecord(name, raw),
    order: (records) => orderShelf(name, records),
    isNewestLast: false,
    atFirst: () => DEMO_CATALOGUE[name],
    isNeverEmpty: true,
    idOf: ({ id }) => id,
    nameOf: (record) => record.name,
    staysInMerge: never,
    inBackup: byId,
    isOwn: ({ origin }) => origin === 'by-hand',
    asCopy: (record, id) => copyRecord(record, id, [record.name], OTHER_TAB),
  };
}

function byId<T extends { readonly id: string }>(rows: readonly T[]): readonly T[] {
  return [...rows].sort((one, other) => (one.id < other.id ? -1 : 1));
}

/** Every store of what the app keeps. */
export const CONTENT_STORES = Object.keys(STORES) as readonly ContentStore[];

/** The same, and where their contents are kept from before an upgrade or an import. */
export const ALL_STORES = [...CONTENT_STORES, 'former-contents'] as const;

/** Those that a person's changes go into. */
export const STORE_NAMES = CONTENT_STORES.filter((name): name is StoreName => name !== 'set-aside');

export const LIST_NAMES = Object.keys(LISTS) as readonly ListName[];

/** What can be made of the rows of any store. */
interface Makings<Row> {
  readonly rows: readonly Row[];
  readonly read: ReadRows<Row>;
  readonly planned: PlannedRows<Row>;
}
type Making = keyof Makings<unknown>;

/** The same made of every list. */
export type OfLists<M extends Making> = { readonly [L in ListName]: Makings<Rows[L]>[M] };

/** The same made of every store. */
export type OfStores<M extends Making> = {
  readonly [S in ContentStore]: Makings<ContentRows[S]>[M];
};

export function ofLists<M extends Making>(
  make: <L extends ListName>(name: L) => Makings<Rows[L]>[M],
): OfLists<M> {
  return Object.fromEntries(LIST_NAMES.map((name) => [name, make(name)])) as OfLists<M>;
}

export function ofStores<M extends Making>(
  make: <S extends ContentStore>(name: S) => Makings<ContentRows[S]>[M],
): OfStores<M> {
  return Object.fromEntries(CONTENT_STORES.map((name) => [name, make(name)])) as OfStores<M>;
}

/** Contents as the rows of their stores, of which all look alike. */
export function storesOf({ desk, setAside, ...lists }: Contents): OfStores<'rows'> {
  return { ...lists, desk: [desk], 'set-aside': setAside };
}

/** A valid row out of anything found in a store; undefined where it is beyond repair. */
export function parseRow(store: StoreName, raw: unknown): KeptRow | undefined {
  // The record that a desk's choice names may be on its way from another tab.
  if (store === 'desk') return isPlainObject(raw) ? mendDesk(raw, '', () => {}) : undefined;
  const parsed = LISTS[store].parse(raw);
  return parsed.ok ? parsed.record : undefined;
}

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
  return (
    CONTENT_STORES.some((name) => name === was.store) && REASONS.some((name) => name === was.reason)
  );
}

/** What was set aside earlier; a row that does not say so counts as set aside itself. */
export function readSetAside(was: unknown): SetAside {
  return isSetAside(was) ? was : { store: 'set-aside', raw: was, reason: 'not-a-record' };
}
