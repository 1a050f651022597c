import { contentsAfter } from './contents-after';
import { EXAMPLE_POSITIONS } from './example-positions';
import { LAST_ON_SHELF } from './last-on-shelf';
import { NOTHING_KEPT } from './nothing-kept';
import type { NoticeBoard } from './notice-board';
import { orderAttempts } from './order-attempts';
import { orderPositions } from './order-positions';
import { orderShelf } from './order-shelf';
import { contentsOf, readContents } from './read-contents';
import type { ShelfName, Shelves } from './records';
import type { Contents, StorePort } from './store-port';

const OK = { ok: true } as const;

/** A store that lasts as long as the page, for browsers that give no other. */
export function createMemoryStore(board: NoticeBoard): StorePort {
  const nothing = contentsOf({}, readContents({}, undefined));
  let contents: Contents = { ...nothing, positions: orderPositions(EXAMPLE_POSITIONS) };
  let former: { readonly atMs: number; readonly contents: Contents } | null = null;

  const change = (part: Partial<Contents>) => {
    contents = { ...contents, ...part };
  };
  const exchange = (next: Contents) => {
    former = { atMs: Date.now(), contents };
    contents = next;
  };
  const replace = <S extends ShelfName>(shelf: S, records: readonly Shelves[S][]) => {
    change({ shelves: { ...contents.shelves, [shelf]: orderShelf(shelf, records) } });
  };
  const without = <S extends ShelfName>(shelf: S, id: string): readonly Shelves[S][] =>
    contents.shelves[shelf].filter((record) => record.id !== id);
  const otherAttempts = (id: string) => contents.attempts.filter((attempt) => attempt.id !== id);
  const otherPositions = (id: string) => contents.positions.filter((one) => one.id !== id);

  return {
    keeps: false,
    async loadAll() {
      const { desk, shelves, attempts, positions } = contents;
      return { desk, shelves, attempts, positions, repairs: [], quarantined: [] };
    },
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
    async saveDesk(desk) {
      change({ desk });
      return OK;
    },
    draftDesk: (desk) => change({ desk }),
    async putAttempt(attempt) {
      change({ attempts: orderAttempts([...otherAttempts(attempt.id), attempt]) });
      return OK;
    },
    async deleteAttempt(id) {
      change({ attempts: otherAttempts(id) });
      return OK;
    },
    async putPosition(position) {
      change({ positions: orderPositions([...otherPositions(position.id), position]) });
      return OK;
    },
    async deletePosition(id) {
      change({ positions: otherPositions(id) });
      return OK;
    },
    readAll: async () => ({ ok: true, contents }),
    async importBackup(plan) {
      exchange(contentsAfter(contents, plan));
      return OK;
    },
    lastImportMs: async () => former?.atMs ?? null,
    async undoImport() {
      if (!former) return NOTHING_KEPT;
      exchange(former.contents);
      return OK;
    },
    onNotice: (listener) => board.onNotice(listener),
  };
}
