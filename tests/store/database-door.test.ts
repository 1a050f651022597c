import { forceCloseDatabase } from 'fake-indexeddb';
import { deleteDB, openDB, unwrap } from 'idb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { createDatabaseDoor, type DatabaseEvent } from '../../src/store/database-door';
import type { Database } from '../../src/store/database-schema';
import { latestVersion, MIGRATIONS } from '../../src/store/migrations';
import { beginWriting } from '../../src/store/transactions';
import { newDevice } from './new-device';

beforeEach(() => {
  newDevice();
});

function listen() {
  const events: DatabaseEvent[] = [];
  return { events, onEvent: (event: DatabaseEvent) => void events.push(event) };
}

/** What a browser does when it kills the database from under a page. */
function kill(database: Database): void {
  forceCloseDatabase(unwrap(database) as unknown as Parameters<typeof forceCloseDatabase>[0]);
}

const put = (database: Database) => database.put('desk', { saved: true }, 'current');
const get = (database: Database) => database.get('desk', 'current');

describe('the door to the database', () => {
  it('gives callers at once the same connection', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    const [one, other] = await Promise.all([
      door.withDatabase(async (database) => database),
      door.withDatabase(async (database) => database),
    ]);
    expect(unwrap(one)).toBe(unwrap(other));
  });

  it('writes again after the browser closed the connection, and says so', async () => {
    const { events, onEvent } = listen();
    const door = createDatabaseDoor('leeway', onEvent);
    await door.withDatabase(async (database) => kill(database));
    await vi.waitFor(() => expect(events).toEqual(['closed']));
    await door.withDatabase(put);
    expect(await door.withDatabase(get)).toEqual({ saved: true });
    expect(events).toEqual(['closed']);
  });

  it('writes again on a connection that died without a word', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    await door.withDatabase(async (database) => unwrap(database).close());
    await door.withDatabase(put);
    expect(await door.withDatabase(get)).toEqual({ saved: true });
  });

  it('takes back what is under way when it lets go, and does it over on another connection', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    await door.withDatabase(put);
    let runs = 0;
    await door.withDatabase(async (database) => {
      runs += 1;
      const transaction = beginWriting(database, ['desk']);
      const done = transaction.store.put({ run: runs }, 'current');
      if (runs === 1) door.letGo();
      await Promise.all([done, transaction.done]);
    });
    expect(runs).toBe(2);
    expect(await door.withDatabase(get)).toEqual({ run: 2 });
  });

  it('lets go when asked, and opens another for the next work', async () => {
    const { events, onEvent } = listen();
    const door = createDatabaseDoor('leeway', onEvent);
    const writing = door.withDatabase(put);
    const [first] = await Promise.all([door.withDatabase(async (database) => database), writing]);
    const last = door.withDatabase(put);
    door.letGo();
    await last;
    expect(() => first.transaction('desk')).toThrow(
      expect.objectContaining({ name: 'InvalidStateError' }),
    );
    expect(await door.withDatabase(get)).toEqual({ saved: true });
    door.letGo();
    door.letGo();
    expect(await door.withDatabase(get)).toEqual({ saved: true });
    expect(events).toEqual([]);
  });

  it('writes again when the connection dies in the middle of the work', async () => {
    const { events, onEvent } = listen();
    const door = createDatabaseDoor('leeway', onEvent);
    let runs = 0;
    await door.withDatabase(async (database) => {
      runs += 1;
      const transaction = database.transaction('desk', 'readwrite');
      const done = transaction.store.put({ run: runs }, 'current');
      if (runs === 1) {
        // A browser that kills a connection aborts what runs on it; the test's does not.
        transaction.abort();
        kill(database);
      }
      await Promise.all([done, transaction.done]);
    });
    expect(runs).toBe(2);
    expect(await door.withDatabase(get)).toEqual({ run: 2 });
    expect(events).toEqual(['closed']);
  });

  it.each([
    ['dies with the connection twice', 'UnknownError', 2],
    ['fails for a reason of its own', 'QuotaExceededError', 1],
  ])('gives up work that %s', async (_, name, tries) => {
    const door = createDatabaseDoor('leeway', () => {});
    let runs = 0;
    const work = door.withDatabase(async () => {
      runs += 1;
      throw new DOMException('Connection to Indexed Database server lost', name);
    });
    await expect(work).rejects.toMatchObject({ name });
    expect(runs).toBe(tries);
  });

  it('opens anew after an opening that failed', async () => {
    const door = createDatabaseDoor('leeway', () => {});
    const working = globalThis.indexedDB;
    globalThis.indexedDB = {
      ...working,
      open: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    };
    await expect(door.withDatabase(put)).rejects.toMatchObject({ name: 'SecurityError' });
    globalThis.indexedDB = working;
    await door.withDatabase(put);
    expect(await door.withDatabase(get)).toEqual({ saved: true });
  });

  it('says when an older tab blocks it, and opens once that tab is gone', async () => {
    const older = await openDB('leeway', 1, {
      upgrade: (database) => void database.createObjectStore('desk'),
    });
    const { events, onEvent } = listen();
    const next = { version: latestVersion(MIGRATIONS) + 1, run: () => {} };
    const door = createDatabaseDoor('leeway', onEvent, [...MIGRATIONS, next]);
    const writing = door.withDatabase(async (database) => database.version);
    await vi.waitFor(() => expect(events).toEqual(['blocked']));
    older.close();
    expect(await writing).toBe(next.version);
  });

  it('steps aside for a newer tab, says so, and then refuses to go back', async () => {
    const { events, onEvent } = listen();
    const door = createDatabaseDoor('leeway', onEvent);
    await door.withDatabase(put);
    const newer = await openDB('leeway', latestVersion(MIGRATIONS) + 1);
    expect(await newer.get('desk', 'current')).toEqual({ saved: true });
    expect(events).toEqual(['outdated']);
    await expect(door.withDatabase(put)).rejects.toMatchObject({ name: 'VersionError' });
    newer.close();
  });

  it('steps aside for a deletion, says so, and opens one with nothing in it', async () => {
    const { events, onEvent } = listen();
    const door = createDatabaseDoor('leeway', onEvent);
    await door.withDatabase(put);
    await deleteDB('leeway');
    expect(events).toEqual(['deleted']);
    expect(await door.withDatabase(get)).toBeUndefined();
    expect(events).toEqual(['deleted', 'emptied']);
  });
});
