import type { IDBPTransaction } from 'idb';
import { type Database, type DatabaseSchema, DESK_KEY } from './database-schema';
import { type FormerContents, isOfImport, lastImport, readRaw } from './former-contents';
import { freshId } from './fresh-id';
import { ERA_KEY } from './import-era';
import type { RawStores } from './read-rows';
import type { ImportPlan, RestoreResult, WriteResult } from './store-port';
import { ALL_STORES, CONTENT_STORES, LIST_NAMES } from './stores';
import { allOrNothing, askAll, beginReading, beginWriting, putRow } from './transactions';

type OverAll = IDBPTransaction<DatabaseSchema, typeof ALL_STORES, 'readwrite'>;

/** When an exchange was asked for, and what tells it from others: done twice, it is done once. */
export interface Stamp {
  readonly id: string;
  readonly atMs: number;
}

export function newStamp(): Stamp {
  return { id: freshId(), atMs: Date.now() };
}

/** Writes what was planned, and keeps what was there before. */
export async function importContents(
  database: Database,
  plan: ImportPlan,
  stamp: Stamp,
): Promise<WriteResult> {
  return await allOrNothing(beginWriting(database, ALL_STORES), async (transaction) => {
    const former = await findFormer(transaction);
    if (former?.id === stamp.id) return { ok: true };
    await keepFormer(transaction, stamp);
    if (plan.mode === 'replace') await clearContents(transaction);
    await putPlanned(transaction, plan.toPut);
    await beginEra(transaction, stamp);
    return { ok: true };
  });
}

/** Puts back what was there before the last import, and keeps what was there before this. */
export async function putBackFormer(database: Database, stamp: Stamp): Promise<RestoreResult> {
  return await allOrNothing(beginWriting(database, ALL_STORES), async (transaction) => {
    const former = await findFormer(transaction);
    if (!former) return { ok: false, reason: 'nothing-kept' };
    if (former.id === stamp.id) return { ok: true };
    await keepFormer(transaction, stamp);
    await clearContents(transaction);
    await putRaw(transaction, former.rows);
    await beginEra(transaction, stamp);
    return { ok: true };
  });
}

/** When the last import was done, or null where none can be undone. */
export async function findImportMs(database: Database): Promise<number | null> {
  const rows = await beginReading(database, ['former-contents']).store.getAll();
  return lastImport(rows, database.version)?.atMs ?? null;
}

async function findFormer(transaction: OverAll): Promise<FormerContents | null> {
  const rows = await transaction.objectStore('former-contents').getAll();
  return lastImport(rows, transaction.db.version);
}

/** One import can be undone, so an earlier one's copy goes; those of upgrades stay. */
async function keepFormer(transaction: OverAll, stamp: Stamp): Promise<void> {
  const rows = await readRaw(transaction, CONTENT_STORES);
  const store = transaction.objectStore('former-contents');
  for (const key of await store.getAllKeys()) {
    if (isOfImport(await store.get(key))) await store.delete(key);
  }
  const kept: FormerContents = { reason: 'import', ...stamp, schema: transaction.db.version, rows };
  await store.add(kept);
}

/** From now on a tab that still shows what was there before is refused. */
async function beginEra(transaction: OverAll, { id }: Stamp): Promise<void> {
  await transaction.objectStore('desk').put(id, ERA_KEY);
}

async function clearContents(transaction: OverAll): Promise<void> {
  for (const name of CONTENT_STORES) await transaction.objectStore(name).clear();
}

async function putPlanned(transaction: OverAll, toPut: ImportPlan['toPut']): Promise<void> {
  for (const name of LIST_NAMES) {
    const store = transaction.objectStore(name);
    await askAll<unknown>(toPut[name], (row) => store.put(row));
  }
  if (toPut.desk) await transaction.objectStore('desk').put(toPut.desk, DESK_KEY);
  const setAside = transaction.objectStore('set-aside');
  await askAll(toPut.setAside, (row) => setAside.add(row));
}

async function putRaw(transaction: OverAll, rows: RawStores): Promise<void> {
  for (const name of CONTENT_STORES) {
    await askAll(rows[name] ?? [], ({ key, value }) =>
      putRow(transaction, name, String(key), value),
    );
  }
}
