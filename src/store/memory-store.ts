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
import { SHELF_NAMES } from './shelf-names';
import type { Contents, StoreName, StorePort } from './store-port';
import { createUnsavedNotes, type UnsavedNotes, withNotes } from './unsaved-notes';

const OK = { ok: true } as const;

/**
 * A store that lasts as long as the page, for browsers that give no other. What is put is noted as
 * well: where only the database fails, the next load that can open it adds what it does not have.
 */
export function createMemoryStore(
  board: NoticeBoard,
  notes: UnsavedNotes = createUnsavedNotes(() => null),
): StorePort {
  let contents = firstContents(notes);
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
  const note = (store: StoreName, row: { readonly id: string }) => {
    notes.add({ store, id: row.id, era: null, row });
  };
  const otherAttempts = (id: string) => contents.attempts.filter((attempt) => attempt.id !== id);
  const otherPositions = (id: string) => contents.positions.filter((one) => one.id !== id);

  return {
    keeps: false,
    async loadAll() {
      const { desk, shelves, attempts, positions } = contents;
      return { desk, shelves, attempts, positions, repairs: [], quarantined: [] };
    },
    async putRecord(shelf, record) {
      note(shelf, record);
      replace(shelf, [...without(shelf, record.id), record]);
      return OK;
    },
    async deleteRecord(shelf, id) {
      const rest = without(shelf, id);
      if (rest.length === 0) return LAST_ON_SHELF;
      notes.drop({ store: shelf, id });
      replace(shelf, rest);
      return OK;
    },
    async saveDesk(desk) {
      change({ desk });
      return OK;
    },
    draftDesk: (desk) => change({ desk }),
    async putAttempt(attempt) {
      note('attempts', attempt);
      change({ attempts: orderAttempts([...otherAttempts(attempt.id), attempt]) });
      return OK;
    },
    async deleteAttempt(id) {
      notes.drop({ store: 'attempts', id });
      change({ attempts: otherAttempts(id) });
      return OK;
    },
    async putPosition(position) {
      note('positions', position);
      change({ positions: orderPositions([...otherPositions(position.id), position]) });
      return OK;
    },
    async deletePosition(id) {
      notes.drop({ store: 'positions', id });
      change({ positions: otherPositions(id) });
      return OK;
    },
    saveUnsaved: async () => {},
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
    formerCopies: async () => [],
    // No other tab has any part in it.
    onElsewhere: () => () => {},
    answerElsewhere: () => {},
    onNotice: (listener, onOver) => board.onNotice(listener, onOver),
  };
}

/** Those of a first visit, and what an earlier visit noted. */
function firstContents(notes: UnsavedNotes): Contents {
  const rows = (records: readonly { readonly id: string }[]) =>
    records.map((value) => ({ key: value.id, value }));
  const { shelves } = readContents({}).loaded;
  const raw = {
    ...Object.fromEntries(SHELF_NAMES.map((shelf) => [shelf, rows(shelves[shelf])])),
    positions: rows(EXAMPLE_POSITIONS),
  };
  const noted = withNotes(raw, notes.all(), null).raw;
  return contentsOf(noted, readContents(noted));
}
