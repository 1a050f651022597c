import { LAST_ON_SHELF } from './last-on-shelf';
import type { NoticeBoard } from './notice-board';
import { orderShelf } from './order-shelf';
import { readContents } from './read-contents';
import type { Desk, ShelfName, Shelves } from './records';
import type { ShelfContents, StorePort } from './store-port';

const OK = { ok: true } as const;

/** A store that lasts as long as the page, for browsers that give no other. */
export function createMemoryStore(board: NoticeBoard): StorePort {
  const firstVisit = readContents({
    rows: { cues: [], cloths: [], balls: [], tables: [] },
    desk: undefined,
    deskDraft: undefined,
  }).loaded;
  let shelves: ShelfContents = firstVisit.shelves;
  let desk: Desk = firstVisit.desk;

  const replace = <S extends ShelfName>(shelf: S, records: readonly Shelves[S][]) => {
    shelves = { ...shelves, [shelf]: orderShelf(shelf, records) };
  };
  const without = <S extends ShelfName>(shelf: S, id: string): readonly Shelves[S][] =>
    shelves[shelf].filter((record) => record.id !== id);

  return {
    keeps: false,
    loadAll: async () => ({ desk, shelves, repairs: [], quarantined: [] }),
    async putRecord(shelf, record) {
      replace(shelf, [...without(shelf, record.id), record]);
      return OK;
    },
    async deleteRecord(shelf, id) {
      const rest = without(shelf, id);
      if (rest.length === 0) return LAST_ON_SHELF;
      replace(shelf, rest);
      return OK;
    },
    async saveDesk(next) {
      desk = next;
      return OK;
    },
    draftDesk(next) {
      desk = next;
    },
    onNotice: (listener) => board.onNotice(listener),
  };
}
