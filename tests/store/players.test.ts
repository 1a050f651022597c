import { beforeEach, describe, expect, it } from 'vitest';
import { createDatabaseDoor } from '../../src/store/database-door';
import { DEFAULT_DESK } from '../../src/store/default-desk';
import { MIGRATIONS } from '../../src/store/migrations';
import { FORMER_MADE } from '../../src/store/parse-player';
import { onEitherStorage, openApp } from './either-storage';
import { LAID_SHOT, NEWCOMER, PLAIN_SHOT, STUDENT } from './invented-players';
import { newDevice } from './new-device';

onEitherStorage('players and their shots', (keeps) => {
  it('are one of whom nothing is known on a first visit', async () => {
    const { store, loaded } = await openApp();
    expect(loaded.players).toMatchObject([{ madeOf10: null, wasAsked: false }]);
    expect(loaded.played).toEqual([]);
    expect((await store.loadAll()).players).toEqual(loaded.players);
    expect(store.keeps).toBe(keeps);
  });

  it('come back in the order in which they were made and played', async () => {
    const { store, loaded } = await openApp();
    for (const player of [NEWCOMER, STUDENT]) await store.put('players', player);
    for (const shot of [PLAIN_SHOT, LAID_SHOT]) await store.put('played', shot);
    const { players, played } = await store.loadAll();
    expect(players).toEqual([...loaded.players, STUDENT, NEWCOMER]);
    expect(played).toEqual([LAID_SHOT, PLAIN_SHOT]);
  });
});

describe('players on the device', () => {
  beforeEach(() => {
    newDevice();
  });

  it('outlive the visit', async () => {
    const { store, loaded } = await openApp();
    await store.put('players', STUDENT);
    await store.put('played', LAID_SHOT);
    await store.saveDesk({ ...DEFAULT_DESK, playerId: STUDENT.id });
    const again = await openApp();
    expect(again.loaded.players).toEqual([...loaded.players, STUDENT]);
    expect(again.loaded.played).toEqual([LAID_SHOT]);
    expect(again.loaded.desk.playerId).toBe(STUDENT.id);
  });
});

/** A device that has run the fourth version of the database. */
async function fourthVersion(desk: object): Promise<void> {
  const fourth = createDatabaseDoor('leeway', () => {}, MIGRATIONS.slice(0, 4));
  await fourth.withDatabase(async (database) => {
    await database.put('desk', desk, 'current');
    database.close();
  });
}

describe('the fifth version', () => {
  beforeEach(() => {
    newDevice();
  });

  it.each(Object.entries(FORMER_MADE))(
    'has a player of its own in the place of the %s one, who makes %d of 10',
    async (player, madeOf10) => {
      const { playerId: _none, ...desk } = DEFAULT_DESK;
      await fourthVersion({ ...desk, player });
      const { loaded } = await openApp();
      expect(loaded.players).toMatchObject([{ madeOf10, wasAsked: false }]);
      expect(loaded.repairs).toEqual([]);
      expect(loaded.desk.playerId).toBe(loaded.players[0]?.id);
      expect(loaded.desk).not.toHaveProperty('player');
      expect((await openApp()).loaded.players).toEqual(loaded.players);
    },
  );

  it('has the first player of a new device where the fourth had no desk', async () => {
    const fourth = createDatabaseDoor('leeway', () => {}, MIGRATIONS.slice(0, 4));
    await fourth.withDatabase(async (database) => database.close());
    expect((await openApp()).loaded.players).toMatchObject([{ madeOf10: null }]);
  });
});
