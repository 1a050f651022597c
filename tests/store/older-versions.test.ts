import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStore } from '../../src/store/create-store';
import { createDatabaseDoor } from '../../src/store/database-door';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { EXAMPLE_POSITIONS } from '../../src/store/example-positions';
import { latestVersion, MIGRATIONS } from '../../src/store/migrations';
import { FORMER_MADE } from '../../src/store/parse-player';
import { fetchMemory } from '../harness/fetch-memory';
import { CURVE_ATTEMPT } from './invented-attempts';
import { newDevice } from './new-device';

beforeEach(() => {
  newDevice();
});
afterEach(() => {
  vi.restoreAllMocks();
});

/** The desk of the first version, word for word. */
const FIRST_DESK = {
  shot: { distanceM: 1.4, cutRad: 0.3, side: 0.2, height: -0.1, elevationRad: 0, speedMps: 2.2 },
  heldShot: null,
  choice: {
    cues: 'mine',
    cloths: 'demo-cloth-club',
    balls: 'demo-balls-clean',
    tables: 'demo-table-9ft',
  },
  preferences: {
    lengthUnit: 'in',
    distanceUnit: 'diamonds',
    distanceFrom: 'ball-to-ball',
    speedUnit: 'mph',
    cutUnit: 'ball-hit',
    lead: 'ghost-ball',
    hand: 'left',
    theme: 'light',
  },
  pocket: { distanceM: 0.9, mouthM: 0.12 },
  player: 'steady',
};

/** A cue of the first version, with a field that version did not know either. */
const FIRST_CUE = {
  id: 'mine',
  name: 'My cue',
  origin: 'by-hand',
  massRatio: 27,
  tipDiameterM: 0.0127,
  tipRadiusM: 0.0097,
  ferrule: 'short',
};

/** The first apps did not know of a table’s cushions. */
const FIRST_TABLES = DEMO_CATALOGUE.tables.map(({ cushion: _cushion, ...table }) => table);

const FIRST_SET_ASIDE = { store: 'cues', raw: { id: 7 }, reason: 'no-id' };

/** A device that has run the first version of the database, with rows in every kind of store. */
async function firstVersion(): Promise<void> {
  const door = createDatabaseDoor('leeway', () => {}, MIGRATIONS.slice(0, 1));
  await door.withDatabase(async (database) => {
    await database.put('cues', FIRST_CUE);
    for (const cloth of DEMO_CATALOGUE.cloths) await database.put('cloths', cloth);
    for (const balls of DEMO_CATALOGUE.balls) await database.put('balls', balls);
    for (const table of FIRST_TABLES) await database.put('tables', table);
    await database.put('desk', FIRST_DESK, 'current');
    await database.add('set-aside', FIRST_SET_ASIDE);
    database.close();
  });
}

/** The copies of what was there before, as an update to the latest version leaves them. */
async function copiesAfterUpdate(): Promise<unknown[]> {
  const door = createDatabaseDoor('leeway', () => {});
  return await door.withDatabase((database) => database.getAll('former-contents'));
}

/** The database after an update for which there was no room: the first row it wrote failed. */
async function afterFailedUpdate(method: 'add' | 'put') {
  const write = vi.spyOn(IDBObjectStore.prototype, method).mockImplementationOnce(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  const door = createDatabaseDoor('leeway', () => {});
  await expect(door.withDatabase(async () => {})).rejects.toMatchObject({ name: 'AbortError' });
  expect(write).toHaveBeenCalledOnce();
  return await openDB('leeway');
}

describe('the second version', () => {
  it('finds every row of the first where it was, and opens with its desk and cue', async () => {
    await firstVersion();
    const store = createStore({ fetchMemory, findDraftStorage: () => null });
    const loaded = await store.loadAll();
    expect(loaded.repairs).toEqual([]);
    expect(loaded.quarantined).toEqual([]);
    expect(loaded.attempts).toEqual([]);
    const { player: _name, ...desk } = FIRST_DESK;
    const shot = { ...desk.shot, headingRad: null };
    expect(loaded.players).toMatchObject([{ madeOf10: FORMER_MADE.steady, wasAsked: false }]);
    const playerId = loaded.players[0]?.id;
    // The unit of the tip's place came later.
    const preferences = { ...desk.preferences, tipUnit: 'tips' };
    expect(loaded.desk).toEqual({ ...desk, shot, preferences, recentShots: [], playerId, law: 1 });
    expect(loaded.cues).toEqual([{ ...FIRST_CUE, changes: [], like: null }]);
    expect(loaded.tables).toEqual(DEMO_CATALOGUE.tables);
    const raw = await openDB('leeway');
    expect(raw.version).toBe(latestVersion(MIGRATIONS));
    expect(await raw.getAll('cues')).toEqual([FIRST_CUE]);
    expect(await raw.getAll('desk')).toEqual([{ ...desk, playerId }]);
    expect(await raw.getAll('set-aside')).toEqual([FIRST_SET_ASIDE]);
    raw.close();
  });

  it('keeps a copy of all that the first held', async () => {
    await firstVersion();
    const copies = await copiesAfterUpdate();
    expect(copies).toMatchObject([
      {
        reason: 'upgrade',
        schema: 1,
        rows: {
          cues: [{ key: 'mine', value: FIRST_CUE }],
          desk: [{ key: 'current', value: FIRST_DESK }],
          'set-aside': [{ key: 1, value: FIRST_SET_ASIDE }],
        },
      },
    ]);
    const [copy] = copies as [{ rows: { tables: readonly { value: unknown }[] } }];
    const byId = [...FIRST_TABLES].sort((one, other) => (one.id < other.id ? -1 : 1));
    expect(copy.rows.tables.map(({ value }) => value)).toEqual(byId);
  });

  it('keeps the copies of the last three updates, and that of an import', async () => {
    await firstVersion();
    const next = (version: number) => ({ version, run: () => {} });
    const now = latestVersion(MIGRATIONS);
    const later = [now + 1, now + 2, now + 3];
    for (const last of [now, ...later]) {
      const extra = later.filter((version) => version <= last).map(next);
      const door = createDatabaseDoor('leeway', () => {}, [...MIGRATIONS, ...extra]);
      await door.withDatabase(async (database) => {
        if (last === now) await database.add('former-contents', IMPORT_COPY);
        database.close();
      });
    }
    const raw = await openDB('leeway');
    const kept = await raw.getAll('former-contents');
    expect(kept.map(({ reason, schema }) => [reason, schema])).toEqual([
      ['import', now],
      ['upgrade', now],
      ['upgrade', now + 1],
      ['upgrade', now + 2],
    ]);
    raw.close();
  });

  it('keeps no copy where there was nothing before', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    expect(await door.withDatabase((database) => database.count('former-contents'))).toBe(0);
  });

  it('leaves the first as it was where the copy cannot be written', async () => {
    await firstVersion();
    const raw = await afterFailedUpdate('add');
    expect(raw.version).toBe(1);
    expect([...raw.objectStoreNames]).toEqual([
      'balls',
      'cloths',
      'cues',
      'desk',
      'set-aside',
      'tables',
    ]);
    expect(await raw.getAll('cues')).toEqual([FIRST_CUE]);
    raw.close();
  });
});

/** A device that has run the second version of the database. */
async function secondVersion(): Promise<void> {
  const door = createDatabaseDoor('leeway', () => {}, MIGRATIONS.slice(0, 2));
  await door.withDatabase(async (database) => {
    await database.put('cues', FIRST_CUE);
    await database.put('attempts', CURVE_ATTEMPT);
    await database.add('former-contents', { reason: 'import', id: 'a', atMs: 5, schema: 2 });
    database.close();
  });
}

const IMPORT_COPY = {
  reason: 'import',
  id: 'a',
  atMs: 5,
  schema: latestVersion(MIGRATIONS),
  rows: {},
};

describe('the third version', () => {
  it('finds every row of the second where it was, and adds the invented positions', async () => {
    await secondVersion();
    const door = createDatabaseDoor('leeway', () => {});
    await door.withDatabase(async (database) => {
      expect(database.version).toBe(latestVersion(MIGRATIONS));
      expect(await database.getAll('cues')).toEqual([FIRST_CUE]);
      expect(await database.getAll('attempts')).toEqual([CURVE_ATTEMPT]);
      const positions = await database.getAll('positions');
      expect(positions).toHaveLength(EXAMPLE_POSITIONS.length);
      expect(positions).toEqual(expect.arrayContaining([...EXAMPLE_POSITIONS]));
    });
  });

  it('keeps a copy of all that the second held, beside those that are there', async () => {
    await secondVersion();
    const copies = await copiesAfterUpdate();
    expect(copies).toMatchObject([
      { reason: 'import', id: 'a' },
      { reason: 'upgrade', schema: 2, rows: { attempts: [{ value: CURVE_ATTEMPT }] } },
    ]);
  });

  it('leaves the second as it was where a position cannot be written', async () => {
    await secondVersion();
    const raw = await afterFailedUpdate('put');
    expect(raw.version).toBe(2);
    expect([...raw.objectStoreNames]).not.toContain('positions');
    expect(await raw.getAll('attempts')).toEqual([CURVE_ATTEMPT]);
    raw.close();
  });
});
