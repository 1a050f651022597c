import { beforeEach, describe, expect, it } from 'vitest';
import { createDatabaseDoor } from '../../src/store/database-door';
import { MIGRATIONS } from '../../src/store/migrations';
import { newDevice } from './new-device';

beforeEach(() => {
  newDevice();
});

/** A position as the third version wrote it, with a field that version did not know either. */
const THIRD_POSITION = {
  id: 'p',
  name: 'Long cut',
  origin: 'by-hand',
  lengthM: 2.54,
  widthM: 1.27,
  balls: [{ name: 'cue', xM: 0, yM: 0 }],
  intent: { ball: 3, pocket: null },
  zone: null,
  changedAtMs: 7,
  colour: 'green',
};

describe('the fourth version', () => {
  it('has what was to be played as a goal, and keeps what the third held beside it', async () => {
    const third = createDatabaseDoor('leeway', () => {}, MIGRATIONS.slice(0, 3));
    await third.withDatabase(async (database) => {
      await database.clear('positions');
      await database.put('positions', THIRD_POSITION);
      database.close();
    });
    const door = createDatabaseDoor('leeway', () => {});
    const { intent, ...rest } = THIRD_POSITION;
    await door.withDatabase(async (database) => {
      expect(await database.getAll('positions')).toEqual([
        { ...rest, goal: { kind: 'pot', ...intent, via: [] } },
      ]);
      expect(await database.getAll('former-contents')).toMatchObject([
        { reason: 'upgrade', schema: 3, rows: { positions: [{ value: THIRD_POSITION }] } },
      ]);
    });
  });
});
