import { expect, it, vi } from 'vitest';
import { createStorageRoom } from '../../../src/sensors/storage-room';

it('asks once, and waits for no answer', () => {
  const persist = vi.fn(() => new Promise<boolean>(() => {}));
  const room = createStorageRoom({ persist });
  room.ask();
  room.ask();
  expect(persist).toHaveBeenCalledOnce();
});

it('minds no refusal', async () => {
  const refused = async () => Promise.reject(new TypeError('not allowed'));
  const room = createStorageRoom({ persist: refused, persisted: refused, estimate: refused });
  room.ask();
  expect(await room.look()).toEqual({ isPromised: null, usedBytes: null, mostBytes: null });
});

it('says what the browser says', async () => {
  const room = createStorageRoom({
    persisted: async () => true,
    estimate: async () => ({ usage: 5, quota: 70 }),
  });
  expect(await room.look()).toEqual({ isPromised: true, usedBytes: 5, mostBytes: 70 });
});

it.each([undefined, {}])('says nothing where the browser does not: %j', async (storage) => {
  const room = createStorageRoom(storage);
  room.ask();
  expect(await room.look()).toEqual({ isPromised: null, usedBytes: null, mostBytes: null });
});
