import { openDB } from 'idb';
import { expect, it } from 'vitest';
import { parseBackup } from '../../src/store/backup/parse-backup';
import { writeValue } from '../../src/store/backup/value-text';
import { createStore } from '../../src/store/create-store';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import type { LyingRow } from '../harness/corrupt-rows';
import { fetchMemory } from '../harness/fetch-memory';
import { seededRandom } from '../harness/seeded-random';
import { contentsOf, textOf } from '../store/backup/import-text';
import { lyingRows } from '../store/lying-rows';
import { newDevice } from '../store/new-device';

const DATABASES = campaignSize(40, 600);

async function rawDatabase() {
  return await openDB('leeway');
}

/** Puts rows in place of all there is, as no version of the app would. */
async function layDown(rows: readonly LyingRow[]): Promise<void> {
  const raw = await rawDatabase();
  for (const name of raw.objectStoreNames) await raw.clear(name);
  for (const { store, row } of rows) {
    if (store === 'desk') await raw.put(store, row, 'current');
    else await raw.put(store, row);
  }
  raw.close();
}

/** Every row but copies from before an update, as the database has it, in words. */
async function rowsByStore(): Promise<ReadonlyMap<string, readonly string[]>> {
  const raw = await rawDatabase();
  const names = [...raw.objectStoreNames].filter((name) => name !== 'former-contents');
  const entries = names.map(async (name) => {
    return [name, (await raw.getAll(name)).map((row) => writeValue(row))] as const;
  });
  const found = new Map(await Promise.all(entries));
  raw.close();
  return found;
}

it(
  `opens over any of ${DATABASES} databases gone bad, and loses no row of them`,
  async () => {
    let mended = 0;
    let quarantined = 0;
    for (let seed = 1; seed <= DATABASES; seed++) {
      const findDraftStorage = (
        (storage) => () =>
          storage
      )(newDevice());
      await createStore({ fetchMemory, findDraftStorage }).loadAll();
      await layDown(lyingRows(seededRandom(seed)));
      const before = await rowsByStore();

      const store = createStore({ fetchMemory, findDraftStorage });
      const kinds: string[] = [];
      store.onNotice(({ kind }) => kinds.push(kind));
      const loaded = await store.loadAll();
      expect([seed, store.keeps]).toEqual([seed, true]);
      const isMended = loaded.repairs.length + loaded.quarantined.length > 0;
      expect([seed, kinds]).toEqual([seed, isMended ? ['mended'] : []]);
      // As such it is compared, and noted where the database does not take it.
      const { repairs: _repairs, quarantined: _quarantined, ...rows } = loaded;
      expect(() => JSON.stringify(rows)).not.toThrow();
      mended += loaded.repairs.length;
      quarantined += loaded.quarantined.length;

      // Whatever was there is there still: in its place, or set aside as it was.
      const { setAside } = await contentsOf(store);
      const aside = new Set(setAside.map(({ store: name, raw }) => `${name} ${writeValue(raw)}`));
      // A row of nothing at all says nothing that could be lost.
      aside.add(`desk ${writeValue(undefined)}`);
      const after = await rowsByStore();
      for (const [name, rows] of before) {
        const now = new Set(after.get(name));
        const lost = rows.filter((row) => !now.has(row) && !aside.has(`${name} ${row}`));
        expect([seed, name, lost]).toEqual([seed, name, []]);
      }

      const again = await createStore({ fetchMemory, findDraftStorage }).loadAll();
      expect([seed, again.repairs, again.quarantined]).toEqual([seed, [], []]);
      const parsed = await parseBackup(await textOf(store), null);
      if (!parsed.ok) throw new Error(`${seed}: line ${parsed.line}: ${parsed.fault.reason}`);
      expect([seed, parsed.backup.contents.setAside.length]).toEqual([seed, setAside.length]);
      await store.formerCopies();
    }
    expect(Reflect.get({}, 'isForged')).toBeUndefined();
    tell(`${DATABASES} databases gone bad: ${mended} fields mended, ${quarantined} rows set aside`);
    expect(Math.min(mended, quarantined)).toBeGreaterThan(DATABASES);
  },
  CAMPAIGN_TIMEOUT_MS,
);
