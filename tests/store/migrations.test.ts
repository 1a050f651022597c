import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createDatabaseDoor } from '../../src/store/database-door';
import { latestVersion, MIGRATIONS } from '../../src/store/migrations';
import { ALL_STORES, LIST_NAMES } from '../../src/store/stores';
import { newDevice } from './new-device';

beforeEach(() => {
  newDevice();
});
afterEach(() => {
  vi.restoreAllMocks();
});

const NEXT = latestVersion(MIGRATIONS) + 1;

describe('migrations', () => {
  it('are numbered from 1 without gaps', () => {
    expect(MIGRATIONS.map(({ version }) => version)).toEqual(
      MIGRATIONS.map((_, index) => index + 1),
    );
    expect(latestVersion(MIGRATIONS)).toBe(MIGRATIONS.length);
  });

  it('make every store from nothing', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    const names = await door.withDatabase(async (database) => [...database.objectStoreNames]);
    expect(names).toEqual([...ALL_STORES].sort());
  });

  it('key lists by id, the desk by a key of its own, and number what is set aside', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    const keys = await door.withDatabase(async (database) => {
      const transaction = database.transaction(ALL_STORES);
      return ALL_STORES.map((name) => {
        const { keyPath, autoIncrement } = transaction.objectStore(name);
        return [name, keyPath, autoIncrement];
      });
    });
    expect(keys).toEqual([
      ...LIST_NAMES.map((name) => [name, 'id', false]),
      ['desk', null, false],
      ['set-aside', null, true],
      ['former-contents', null, true],
    ]);
  });

  it('run only the steps a database has not had, in order, and keep its rows', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    await door.withDatabase(async (database) => {
      await database.put('cues', { id: 'mine', massRatio: 20 });
      database.close();
    });
    const ran: number[] = [];
    const step = (version: number) => ({ version, run: () => void ran.push(version) });
    const later = createDatabaseDoor('leeway', () => {}, [
      ...MIGRATIONS,
      step(NEXT),
      step(NEXT + 1),
    ]);
    const cue = await later.withDatabase((database) => database.get('cues', 'mine'));
    expect(cue).toEqual({ id: 'mine', massRatio: 20 });
    expect(ran).toEqual([NEXT, NEXT + 1]);
  });

  it('lead to the version the browser then reports', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    await door.withDatabase(async (database) => database.close());
    const database = await openDB('leeway');
    expect(database.version).toBe(latestVersion(MIGRATIONS));
    database.close();
  });
});
