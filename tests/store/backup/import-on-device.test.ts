import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { parseBackup } from '../../../src/store/backup/parse-backup';
import { planImport } from '../../../src/store/backup/plan-import';
import { createStore } from '../../../src/store/create-store';
import { createDatabaseDoor, type DatabaseDoor } from '../../../src/store/database-door';
import type { Database } from '../../../src/store/database-schema';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { importContents, newStamp, putBackFormer } from '../../../src/store/import-contents';
import { latestVersion, MIGRATIONS } from '../../../src/store/migrations';
import type { DraftStorage } from '../../../src/store/noted-text';
import type { StorePort } from '../../../src/store/store-port';
import { fetchMemory } from '../../harness/fetch-memory';
import { CURVE_ATTEMPT } from '../invented-attempts';
import { STUDENT } from '../invented-players';
import { newDevice } from '../new-device';
import { anyRows, type RowsByStore } from './any-contents';
import { contentsOf, fill, importText, textOf } from './import-text';
import { CONTENTS, MY_CUE } from './invented-contents';

let draftStorage: DraftStorage;
beforeEach(() => {
  draftStorage = newDevice();
});
afterEach(() => {
  vi.restoreAllMocks();
});

async function openApp(): Promise<StorePort> {
  const store = createStore({ fetchMemory, findDraftStorage: () => draftStorage });
  await store.loadAll();
  return store;
}

/** Every row of every store as another program would see it. */
async function dump(): Promise<unknown> {
  const raw = await openDB('leeway');
  const names = [...raw.objectStoreNames];
  const rows = await Promise.all(
    names.map(async (name) => [await raw.getAllKeys(name), await raw.getAll(name)]),
  );
  raw.close();
  return Object.fromEntries(names.map((name, index) => [name, rows[index]]));
}

/** Puts rows into the database behind the app's back. */
async function putRaw({ desk, ...rows }: RowsByStore): Promise<void> {
  const raw = await openDB('leeway');
  for (const [name, values] of Object.entries(rows)) {
    await raw.clear(name);
    for (const value of values) await raw.put(name, value);
  }
  await raw.put('desk', desk, 'current');
  raw.close();
}

/** The text of a backup of {@link CONTENTS}, on a device left with nothing but the demo catalogue. */
async function backupText(): Promise<string> {
  const store = await openApp();
  await fill(store, CONTENTS);
  const text = await textOf(store);
  draftStorage = newDevice();
  return text;
}

/** Work that is done, and done again because the connection dies before it can say so. */
async function twice<T>(door: DatabaseDoor, work: (database: Database) => Promise<T>): Promise<T> {
  let runs = 0;
  const result = await door.withDatabase(async (database) => {
    runs += 1;
    const answer = await work(database);
    if (runs === 1)
      throw new DOMException('Connection to Indexed Database server lost', 'UnknownError');
    return answer;
  });
  expect(runs).toBe(2);
  return result;
}

describe('exporting', () => {
  it('writes nothing', async () => {
    const store = await openApp();
    await fill(store, CONTENTS);
    const raw = await openDB('leeway');
    await raw.put('cues', { ...MY_CUE, massRatio: -4 });
    raw.close();
    const before = await dump();
    await textOf(store);
    expect(await dump()).toEqual(before);
  });

  it('gives what the next load will have, rows gone bad set aside', async () => {
    const store = await openApp();
    await fill(store, CONTENTS);
    const raw = await openDB('leeway');
    const ruin = { id: 'ruin' };
    await raw.put('cues', ruin);
    await raw.put('set-aside', 'torn');
    raw.close();
    const text = await textOf(store);
    const { setAside } = await contentsOf(store);
    expect(setAside).toEqual([
      ...CONTENTS.setAside,
      { store: 'set-aside', raw: 'torn', reason: 'not-a-record' },
      { store: 'cues', raw: ruin, reason: 'nothing-readable' },
    ]);
    await openApp();
    expect(await textOf(store)).toBe(text);
  });

  it('has the desk as it was last noted, though never saved', async () => {
    const store = await openApp();
    await store.put('players', STUDENT);
    store.draftDesk({ ...DEFAULT_DESK, playerId: 'player-student' });
    expect((await contentsOf(store)).desk.playerId).toBe('player-student');
  });

  it('says so where nothing can be read', async () => {
    const store = await openApp();
    const newer = await openDB('leeway', latestVersion(MIGRATIONS) + 1);
    expect(await store.readAll()).toEqual({ ok: false, reason: 'newer-open' });
    expect(await store.lastImportMs()).toBeNull();
    newer.close();
  });
});

describe('export, wipe, import', () => {
  it('gives every row back, unknown fields and all, and then the same export', async () => {
    await fc.assert(
      fc.asyncProperty(anyRows, async (rows) => {
        draftStorage = newDevice();
        await openApp();
        await putRaw(rows);
        const first = await openApp();
        const [contents, text] = [await contentsOf(first), await textOf(first)];
        draftStorage = newDevice();
        const second = await openApp();
        expect(await importText(second, text, 'replace')).toEqual({ ok: true });
        expect(await textOf(second)).toBe(text);
        expect(await contentsOf(second)).toEqual(contents);
        const again = await second.loadAll();
        expect([...again.repairs, ...again.quarantined]).toEqual([]);
        expect(contents.attempts).toHaveLength(rows.attempts.length);
        expect(contents.cues).toHaveLength(rows.cues.length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('an import', () => {
  it('is done whole or not at all, whichever of its writes fails', async () => {
    const text = await backupText();
    const store = await openApp();
    await store.put('attempts', { ...CURVE_ATTEMPT, id: 'here' });
    const before = await dump();
    const { put, add } = IDBObjectStore.prototype;
    let writesLeft = 0;
    const failing = (write: typeof put) =>
      function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
        if (writesLeft === 0) throw new DOMException('no room', 'QuotaExceededError');
        writesLeft -= 1;
        return write.apply(this, given);
      };
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(failing(put));
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(failing(add));
    for (const mode of ['replace', 'merge'] as const) {
      for (const allowed of [0, 1, 2, 3]) {
        writesLeft = allowed;
        expect(await importText(store, text, mode)).toMatchObject({ ok: false, reason: 'full' });
        expect(await dump()).toEqual(before);
      }
    }
    vi.restoreAllMocks();
    expect(await importText(store, text, 'replace')).toEqual({ ok: true });
    expect(await textOf(store)).toBe(text);
  });

  it('is done once, and undone once, where the connection dies before it can say so', async () => {
    const text = await backupText();
    const store = await openApp();
    const before = await textOf(store);
    const parsed = await parseBackup(text, null);
    if (!parsed.ok) throw new Error(parsed.fault.reason);
    const plan = planImport(await contentsOf(store), parsed.backup, 'replace');
    const door = createDatabaseDoor('leeway', () => {});
    const [importing, undoing] = [newStamp(), newStamp()];
    const done = await twice(door, (database) => importContents(database, plan, importing));
    expect(done).toEqual({ ok: true });
    expect(await textOf(store)).toBe(text);
    const undone = await twice(door, (database) => putBackFormer(database, undoing));
    expect(undone).toEqual({ ok: true });
    expect(await textOf(store)).toBe(before);
    await store.undoImport();
    expect(await textOf(store)).toBe(text);
  });

  it('keeps the rows it takes the place of exactly as they were, and no older ones', async () => {
    const text = await backupText();
    const store = await openApp();
    const odd = { ...MY_CUE, massRatio: 'heavy' };
    const raw = await openDB('leeway');
    await raw.add('former-contents', { reason: 'upgrade', schema: 1, rows: {} });
    await raw.put('cues', odd);
    await importText(store, text, 'merge');
    await importText(store, text, 'replace');
    const kept = await raw.getAll('former-contents');
    expect(kept.map(({ reason }) => reason)).toEqual(['upgrade', 'import']);
    await store.undoImport();
    await raw.put('cues', odd);
    await importText(store, text, 'replace');
    const [, last] = await raw.getAll('former-contents');
    expect(last.rows.cues).toContainEqual({ key: 'mine', value: odd });
    raw.close();
  });

  it('is not undone with rows of another layout', async () => {
    const store = await openApp();
    const raw = await openDB('leeway');
    const rows = { cues: [{ key: 'mine', value: MY_CUE }] };
    await raw.add('former-contents', { reason: 'import', id: 'a', atMs: 5, schema: 1, rows });
    expect(await store.undoImport()).toMatchObject({ ok: false, reason: 'nothing-kept' });
    expect(await contentsOf(store)).toMatchObject(DEMO_CATALOGUE);
    raw.close();
  });

  it('is not overtaken by a desk noted before it', async () => {
    const text = await backupText();
    const store = await openApp();
    store.draftDesk({ ...DEFAULT_DESK, playerId: 'player-student' });
    await importText(store, text, 'replace');
    expect((await store.loadAll()).desk).toEqual(CONTENTS.desk);
  });

  it('leaves a desk noted before it to the next load where it merges', async () => {
    const text = await backupText();
    const store = await openApp();
    store.draftDesk({ ...DEFAULT_DESK, playerId: 'player-student' });
    await importText(store, text, 'merge');
    expect((await store.loadAll()).desk.playerId).toBe('player-student');
  });
});
