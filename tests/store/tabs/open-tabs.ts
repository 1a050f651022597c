import { openDB } from 'idb';
import type { StoreName } from '../../../src/store/contents';
import { createStore } from '../../../src/store/create-store';
import type { DraftStorage } from '../../../src/store/noted-text';
import type { Cue, Desk } from '../../../src/store/records';
import type { SavedPosition } from '../../../src/store/saved-position';
import type { StorePort } from '../../../src/store/store-port';
import type { Clash, RowChange } from '../../../src/store/tabs/elsewhere';
import type { TabChannel } from '../../../src/store/tabs/tab-channel';
import { fetchMemory } from '../../harness/fetch-memory';
import { newDevice } from '../new-device';

/** What tabs tell each other, held until it is delivered: as late as a test likes. */
function createAir() {
  const hearers: ((message: unknown) => void)[] = [];
  let held: (() => void)[] = [];
  const channel = (): TabChannel => {
    let mine: ((message: unknown) => void) | null = null;
    return {
      post(message) {
        for (const hear of hearers.filter((one) => one !== mine)) held.push(() => hear(message));
      },
      onMessage(hear) {
        mine = hear;
        hearers.push(hear);
      },
    };
  };
  return {
    channel,
    deliver() {
      const due = held;
      held = [];
      for (const tell of due) tell();
      return due.length;
    },
  };
}

/** A device with as many tabs of the app as are opened on it. */
export function openDevice() {
  const draftStorage = newDevice();
  const air = createAir();
  const openTabs: Tab[] = [];
  return {
    draftStorage,
    /** Delivers what the tabs have told each other, until nothing more comes of it. */
    async settle() {
      do {
        for (const { screen } of openTabs) await screen.rest();
      } while (air.deliver() > 0);
      for (const { screen } of openTabs) await screen.rest();
    },
    async openTab() {
      const tab = await openTab(draftStorage, air.channel());
      openTabs.push(tab);
      return tab;
    },
  };
}

export const HOUSE = 'demo-cue-house';

/** Two tabs of one device, each with the same cue on screen. */
export async function twoTabs() {
  const device = openDevice();
  const [one, other] = [await device.openTab(), await device.openTab()];
  const house = one.screen.cue(HOUSE);
  if (!house) throw new Error('no house cue');
  const kept = async (id = HOUSE) => {
    const raw = await openDB('leeway');
    const row = (await raw.get('cues', id)) as Cue | undefined;
    raw.close();
    return row;
  };
  return { ...device, one, other, house, kept };
}

export type Tab = Awaited<ReturnType<typeof openTab>>;

async function openTab(draftStorage: DraftStorage, channel: TabChannel) {
  const store = createStore({
    fetchMemory,
    patienceMs: 600_000,
    findDraftStorage: () => draftStorage,
    channel,
  });
  const { cues, positions, attempts, desk } = await store.loadAll();
  const rows = new Map<string, unknown>();
  const keyOf = (name: StoreName, id: string) => `${name} ${id}`;
  for (const cue of cues) rows.set(keyOf('cues', cue.id), cue);
  for (const position of positions) rows.set(keyOf('positions', position.id), position);
  for (const attempt of attempts) rows.set(keyOf('attempts', attempt.id), attempt);
  rows.set(keyOf('desk', 'current'), desk);
  const clashes: Clash[] = [];
  const writes: Promise<unknown>[] = [];
  store.onElsewhere((news) => {
    if (news.kind === 'row') hear(news);
    else clashes.push(news);
  });
  const hear = ({ store: name, id, row }: RowChange) => {
    if (row === null) rows.delete(keyOf(name, id));
    else rows.set(keyOf(name, id), row);
  };
  const show = <T>(name: StoreName, id: string, row: T): T => {
    rows.set(keyOf(name, id), row);
    return row;
  };
  const screen = {
    cue: (id: string) => (rows.get(keyOf('cues', id)) ?? null) as Cue | null,
    position: (id: string) => rows.get(keyOf('positions', id)) as SavedPosition,
    desk: () => rows.get(keyOf('desk', 'current')) as Desk,
    ids: (name: StoreName) =>
      [...rows.keys()].filter((key) => key.startsWith(`${name} `)).map((key) => key.split(' ')[1]),
    /** Changes fields of a cue as it is on screen, though it was deleted elsewhere. */
    edit(cue: Cue, change: Partial<Cue>) {
      const now = screen.cue(cue.id) ?? cue;
      const edited = show('cues', cue.id, { ...now, ...change });
      return did(store.put('cues', edited));
    },
    lay(position: SavedPosition) {
      return did(store.put('positions', show('positions', position.id, position)));
    },
    saveDesk: (desk: Desk) => did(store.saveDesk(show('desk', 'current', desk))),
    remove(id: string) {
      rows.delete(keyOf('cues', id));
      return did(store.delete('cues', id));
    },
    /** Resolves once everything asked for is answered. */
    async rest() {
      await Promise.all(writes);
      await store.readAll();
    },
  };
  const did = <R>(write: Promise<R>) => {
    writes.push(write);
    return write;
  };
  return { store: store as StorePort, screen, clashes };
}
