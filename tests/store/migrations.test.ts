import { openDB } from 'idb';
import { beforeEach, describe, expect, it } from 'vitest';
import { createDatabaseDoor } from '../../src/store/database-door';
import { ALL_STORES } from '../../src/store/database-schema';
import { latestVersion, MIGRATIONS } from '../../src/store/migrations';
import { newDevice } from './new-device';

beforeEach(() => {
  newDevice();
});

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

  it('key shelves by id, the desk by a key of its own, and number what is set aside', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    const keys = await door.withDatabase(async (database) => {
      const transaction = database.transaction(ALL_STORES);
      return ALL_STORES.map((name) => {
        const { keyPath, autoIncrement } = transaction.objectStore(name);
        return [name, keyPath, autoIncrement];
      });
    });
    expect(keys).toEqual([
      ['cues', 'id', false],
      ['cloths', 'id', false],
      ['balls', 'id', false],
      ['tables', 'id', false],
      ['desk', null, false],
      ['set-aside', null, true],
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
    const later = createDatabaseDoor('leeway', () => {}, [...MIGRATIONS, step(2), step(3)]);
    const cue = await later.withDatabase((database) => database.get('cues', 'mine'));
    expect(cue).toEqual({ id: 'mine', massRatio: 20 });
    expect(ran).toEqual([2, 3]);
  });

  it('lead to the version the browser then reports', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    await door.withDatabase(async (database) => database.close());
    const database = await openDB('leeway');
    expect(database.version).toBe(latestVersion(MIGRATIONS));
    database.close();
  });
});
