import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type CopyPlaces, copyPlaces, loadKept } from '../../../../src/state/backup/copy-places';
import { createSaveGate } from '../../../../src/state/backup/save-gate';
import { createSecondCopy, runFromCopy } from '../../../../src/state/backup/second-copy';
import { parseBackup } from '../../../../src/store/backup/parse-backup';
import type { Contents } from '../../../../src/store/contents';
import { createMemoryStore } from '../../../../src/store/memory-store';
import { createNoticeBoard } from '../../../../src/store/notice-board';
import { contentsOf, fill } from '../../../store/backup/import-text';
import { CONTENTS, MY_CUE } from '../../../store/backup/invented-contents';
import { LATER_ATTEMPT } from '../../../store/invented-attempts';
import { NEWCOMER, PLAIN_SHOT, STUDENT } from '../../../store/invented-players';
import { newDraftStorage } from '../../../store/new-device';

const NOW_MS = 1_790_000_000_000;

let places: CopyPlaces;
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const [storage, visit] = [newDraftStorage(), newDraftStorage()];
  places = copyPlaces(
    () => storage,
    () => visit,
  );
});
afterEach(() => {
  vi.useRealTimers();
});

/** The copy on a page over a store that holds these contents, or what a first visit finds. */
async function openPage(contents: Contents | null, keeps = true, at = places) {
  const memory = createMemoryStore(createNoticeBoard());
  if (contents) await fill(memory, contents);
  const gate = createSaveGate({ ...memory, keeps });
  const done: string[] = [];
  const copy = createSecondCopy({
    gate,
    places: at,
    into: {
      setMode: (mode) => void done.push(mode),
      pick: async (file) => void done.push(await file.text()),
    },
    now: () => NOW_MS,
    reload: () => void done.push('reload'),
  });
  const offers: unknown[] = [];
  copy.offer.subscribe((offer) => offers.push(offer));
  await settled();
  return { copy, store: gate.store, done, offers };
}

/** Until the copy was looked at; nothing of that waits for a timer. */
async function settled(): Promise<void> {
  for (let turn = 0; turn < 200; turn++) await Promise.resolve();
  await new Promise((resolve) => setImmediate(resolve));
}

/** Long enough after a change for the copy to be renewed. */
async function later(): Promise<void> {
  await vi.advanceTimersByTimeAsync(2000);
  await settled();
}

async function leaveCopyOf(contents: Contents): Promise<void> {
  await openPage(contents);
  await later();
}

const copied = async (text: string | null) => {
  const parsed = await parseBackup(text ?? '', null);
  if (!parsed.ok) throw new Error(parsed.fault.reason);
  return parsed.backup;
};

describe('the second copy', () => {
  it('is made soon after the page has opened, and renewed soon after every change', async () => {
    const { copy, store } = await openPage(CONTENTS);
    expect(places.copy.get()).toBeNull();
    await later();
    expect(copy.made.value).toEqual({ atMs: NOW_MS, leftOut: 0 });
    const first = await copied(places.copy.get());
    expect(first.savedAtMs).toBe(NOW_MS);
    expect(first.contents).toEqual({ ...CONTENTS, setAside: [] });
    await store.put('cues', { ...MY_CUE, massRatio: 31 });
    await later();
    const { contents } = await copied(places.copy.get());
    expect(contents.cues).toContainEqual({ ...MY_CUE, massRatio: 31 });
  });

  it('is offered where nothing of one’s own is left, on every visit until it is taken up', async () => {
    await leaveCopyOf(CONTENTS);
    const lost = places.copy.get();
    const first = await openPage(null);
    expect(first.copy.offer.value).toEqual({ kind: 'lost', savedAtMs: NOW_MS });
    await later();
    expect(places.copy.get()).not.toBe(lost);
    const { copy, done } = await openPage(null);
    expect(copy.offer.value).toEqual({ kind: 'lost', savedAtMs: NOW_MS });
    await copy.take();
    expect(done).toEqual(['replace', lost]);
  });

  it('is offered for a player who answered, or whose shots were logged, alone', async () => {
    const empty = await contentsOf(createMemoryStore(createNoticeBoard()));
    const answered = { ...empty, players: [STUDENT] };
    const logged = { ...empty, players: [NEWCOMER], played: [PLAIN_SHOT] };
    for (const contents of [answered, logged]) {
      places.copy.set(null);
      await leaveCopyOf(contents);
      const { copy } = await openPage(null);
      expect(copy.offer.value?.kind).toBe('lost');
      copy.giveUp();
    }
    places.copy.set(null);
    await leaveCopyOf({ ...empty, players: [NEWCOMER] });
    expect((await openPage(null)).copy.offer.value).toBeNull();
  });

  it('is added to what was entered since', async () => {
    await leaveCopyOf(CONTENTS);
    await openPage(null);
    const empty = await contentsOf(createMemoryStore(createNoticeBoard()));
    const since = { ...empty, attempts: [{ ...LATER_ATTEMPT, id: 'since' }] };
    const { copy, done } = await openPage(since);
    expect(copy.offer.value?.kind).toBe('lost');
    await copy.take();
    expect(done[0]).toBe('merge');
  });

  it('is not offered any more once it was brought back, or given up', async () => {
    await leaveCopyOf(CONTENTS);
    await openPage(null);
    expect((await openPage(CONTENTS)).copy.offer.value).toBeNull();
    expect(places.lost.get()).toBeNull();
    await later();
    const { copy } = await openPage(null);
    copy.giveUp();
    expect(copy.offer.value).toBeNull();
    await later();
    expect((await openPage(null)).copy.offer.value).toBeNull();
  });

  it('is not offered, nor shown for a moment, where it is only behind', async () => {
    await leaveCopyOf(CONTENTS);
    const cues = CONTENTS.cues.map((cue) => ({ ...cue, massRatio: 40 }));
    const ahead = { ...CONTENTS, cues };
    expect((await openPage(ahead)).offers).toEqual([null]);
  });

  it('is no loss where all was exchanged for something else', async () => {
    const { copy } = await openPage(CONTENTS);
    await later();
    copy.forget();
    await later();
    expect((await openPage(null)).copy.offer.value).toBeNull();
  });

  it('is not written over where there is no room to put it aside', async () => {
    await leaveCopyOf(CONTENTS);
    const before = places.copy.get();
    const { copy } = await openPage(null, true, {
      ...places,
      lost: { get: () => null, set: () => false },
    });
    await later();
    expect([copy.made.value, copy.hasNoRoom.value]).toEqual([null, true]);
    expect(places.copy.get()).toBe(before);
  });

  it('says that there is no room for it, until there is', async () => {
    let isFull = true;
    const { copy, store } = await openPage(CONTENTS, true, {
      ...places,
      copy: { ...places.copy, set: (text) => !isFull && places.copy.set(text) },
    });
    expect(copy.hasNoRoom.value).toBe(false);
    await later();
    expect([copy.made.value, copy.hasNoRoom.value]).toEqual([null, true]);
    isFull = false;
    await store.put('attempts', { ...LATER_ATTEMPT, id: 'another' });
    await later();
    expect([copy.made.value?.leftOut, copy.hasNoRoom.value]).toEqual([0, false]);
  });

  it('is held against what is here only where there is one', async () => {
    const memory = createMemoryStore(createNoticeBoard());
    const readAll = vi.fn(memory.readAll);
    createSecondCopy({
      gate: createSaveGate({ ...memory, readAll, keeps: true }),
      places,
      into: { setMode() {}, async pick() {} },
      now: () => NOW_MS,
      reload() {},
    });
    await settled();
    expect(readAll).toHaveBeenCalledTimes(0);
    await later();
    expect(readAll).toHaveBeenCalledTimes(1);
  });

  it('runs the visit where nothing can be kept, when that is asked for, with what was in play', async () => {
    await leaveCopyOf(CONTENTS);
    const { copy, done } = await openPage(null, false);
    expect(copy.offer.value).toEqual({ kind: 'shut', savedAtMs: NOW_MS });
    const shut = createMemoryStore(createNoticeBoard());
    const first = await shut.loadAll();
    const find = vi.fn(async () => ({ runFromCopy }));
    expect(await loadKept(shut, places, find)).toEqual(first);
    expect(find).not.toHaveBeenCalled();
    await copy.take();
    expect(done).toEqual(['reload']);
    const loaded = await loadKept(shut, places, find);
    expect(loaded.desk).toEqual(CONTENTS.desk);
    expect(loaded.attempts).toEqual(CONTENTS.attempts);
    expect((await openPage(null, false)).copy.offer.value).toBeNull();
    await openPage(CONTENTS);
    expect(places.wanted.get()).toBeNull();
  });

  it.each(['', 'torn', '{"leewayBackup":1'])('that is damaged is as none: %j', async (text) => {
    places.copy.set(text);
    const { copy } = await openPage(null);
    expect(copy.offer.value).toBeNull();
    await later();
    expect(copy.made.value).not.toBeNull();
  });
});
