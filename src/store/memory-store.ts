import type { Contents, ListName, Lists, Rows } from './contents';
import { contentsAfter } from './contents-after';
import { EXAMPLE_POSITIONS } from './example-positions';
import type { NoticeBoard } from './notice-board';
import { contentsOf, readContents } from './read-contents';
import type { StorePort } from './store-port';
import { LIST_NAMES, LISTS } from './stores';
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
  const replace = <L extends ListName>(list: L, rows: readonly Rows[L][]) => {
    change({ [list]: LISTS[list].order(rows) });
  };
  const without = <L extends ListName>(list: L, id: string): readonly Rows[L][] =>
    rowsOf(contents, list).filter((row) => row.id !== id);

  return {
    keeps: false,
    async loadAll() {
      const { setAside: _setAside, ...kept } = contents;
      return { ...kept, repairs: [], quarantined: [] };
    },
    async put(list, row) {
      notes.add({ store: list, id: row.id, era: null, row });
      replace(list, [...without(list, row.id), row]);
      return OK;
    },
    async delete(list, id) {
      const rest = without(list, id);
      if (LISTS[list].isNeverEmpty && rest.length === 0)
        return { ok: false, reason: 'last-on-shelf' };
      notes.drop({ store: list, id });
      replace(list, rest);
      return OK;
    },
    async saveDesk(desk) {
      change({ desk });
      return OK;
    },
    draftDesk: (desk) => change({ desk }),
    saveUnsaved: async () => {},
    readAll: async () => ({ ok: true, contents }),
    async importBackup(plan) {
      exchange(contentsAfter(contents, plan));
      return OK;
    },
    lastImportMs: async () => former?.atMs ?? null,
    async undoImport() {
      if (!former) return { ok: false, reason: 'nothing-kept' };
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

function rowsOf<L extends ListName>(lists: Lists, list: L): readonly Rows[L][] {
  return lists[list];
}

/** Those of a first visit, and what an earlier visit noted. */
function firstContents(notes: UnsavedNotes): Contents {
  const rows = (records: readonly { readonly id: string }[]) =>
    records.map((value) => ({ key: value.id, value }));
  const { loaded } = readContents({});
  const raw = {
    ...Object.fromEntries(LIST_NAMES.map((name) => [name, rows(loaded[name])])),
    positions: rows(EXAMPLE_POSITIONS),
  };
  const noted = withNotes(raw, notes.all(), null).raw;
  return contentsOf(noted, readContents(noted));
}
