import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import type { ListName, Rows } from '../store/contents';
import type { DeleteResult, StoreFailure, StorePort } from '../store/store-port';
import { LISTS } from '../store/stores';
import { joinRows } from '../store/tabs/join-rows';
import { failureWords } from '../words/failure-words';

interface WithId {
  readonly id: string;
}

/** Rows of one store, on screen first and in the store soon after. */
export interface KeptRows<T extends WithId> {
  readonly all: ReadonlySignal<readonly T[]>;
  /** Why something is on screen and not in the store, or null. */
  readonly problem: ReadonlySignal<string | null>;
  /** One that was deleted in another tab is found as it was: whoever changes it is asked. */
  find(id: string): T | null;
  /** Adds a row or takes the place of the one with its id. */
  put(row: T): void;
  /** The same, on screen alone: it is in the store once it was put. */
  show(row: T): void;
  /** Comes back where the store refuses: of a shelf it keeps one. */
  remove(id: string): void;
  /** Several at once, each as {@link put} does. */
  putAll(rows: readonly T[]): void;
  /** Several at once, none of which {@link putBack} brings back. */
  removeAll(ids: readonly string[]): void;
  /** The last row removed here, until it is there again, whoever brought it back. */
  readonly removed: ReadonlySignal<T | null>;
  /** Puts that back; null where there is none. */
  putBack(): T | null;
  /** Lets that go: its time is over. */
  forgetRemoved(): void;
  /** Tries again what could not be saved; resolves when the store has answered to everything. */
  flush(): Promise<void>;
}

/** How rows are kept. */
export interface RowsPorts<L extends ListName> {
  readonly store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>;
  readonly list: L;
  /** In which order they are shown: the list's own where none is given. */
  readonly order?: (rows: readonly Rows[L][]) => readonly Rows[L][];
}

/** What another tab did to a row: see {@link RowChange}. */
interface ChangeElsewhere<T> {
  readonly id: string;
  readonly was: T | null;
  readonly row: T | null;
}

/** A change that has not reached the store: what to try again, and why it failed. */
interface Unsaved {
  readonly write: () => Promise<DeleteResult>;
  readonly reason: StoreFailure;
}

/**
 * Writes go to the store at once, and count as answered in the order in which they were asked for.
 * What other tabs do to the rows is taken in.
 */
export function createKeptRows<L extends ListName>(
  { store, list, order = LISTS[list].order }: RowsPorts<L>,
  loaded: readonly Rows[L][],
): KeptRows<Rows[L]> {
  type Row = Rows[L];
  const all = signal(loaded);
  /** What another tab deleted, as it last was: it may still be in hand here. */
  const gone = signal<readonly Row[]>([]);
  const removed = signal<Row | null>(null);
  const unsaved = signal<ReadonlyMap<string, Unsaved>>(new Map());
  let last: Promise<void> = Promise.resolve();

  const refused = signal<StoreFailure | null>(null);

  const note = (id: string, failed: Unsaved | null) => {
    const rest = [...unsaved.peek()].filter(([other]) => other !== id);
    unsaved.value = new Map(failed === null ? rest : [...rest, [id, failed]]);
  };
  const send = (id: string, write: () => Promise<DeleteResult>, whenRefused = () => {}) => {
    const sent = write();
    last = Promise.all([last, sent]).then(([, result]) => {
      const isRefused = !result.ok && result.reason === 'last-on-shelf';
      note(id, result.ok || isRefused ? null : { write, reason: result.reason });
      refused.value = isRefused ? result.reason : null;
      if (isRefused) whenRefused();
    });
  };
  const without = (rows: readonly Row[], id: string) => rows.filter((row) => row.id !== id);
  const show = (row: Row) =>
    batch(() => {
      if (gone.peek().length > 0) gone.value = without(gone.peek(), row.id);
      if (removed.peek()?.id === row.id) removed.value = null;
      all.value = order([...without(all.peek(), row.id), row]);
    });
  const shown = (id: string) => all.value.find((row) => row.id === id) ?? null;
  const find = (id: string) => shown(id) ?? gone.value.find((row) => row.id === id) ?? null;
  const put = (row: Row) => {
    show(row);
    // Tried again, it is saved as it is by then: another tab may have changed it meanwhile.
    send(row.id, () => store.put(list, shown(row.id) ?? row));
  };
  const hear = ({ id, was, row }: ChangeElsewhere<Row>) => {
    const mine = shown(id);
    if (row !== null) return show(mine && was ? joinRows(was, mine, row).row : row);
    if (mine) gone.value = [...without(gone.peek(), id), mine];
    all.value = without(all.peek(), id);
  };
  store.onElsewhere((news) => {
    if (news.kind === 'row' && news.store === list) hear(news as ChangeElsewhere<Row>);
  });

  return {
    all,
    problem: computed(() => {
      const reason = [...unsaved.value.values()].at(-1)?.reason ?? refused.value;
      return reason && failureWords(reason);
    }),
    find,
    put,
    show,
    removed,
    remove: (id) =>
      batch(() => {
        const row = find(id);
        removed.value = row;
        all.value = without(all.peek(), id);
        send(
          id,
          () => store.delete(list, id),
          () => row && show(row),
        );
      }),
    putAll(rows) {
      const given = new Set(rows.map(({ id }) => id));
      all.value = order([...all.peek().filter(({ id }) => !given.has(id)), ...rows]);
      for (const row of rows) send(row.id, () => store.put(list, shown(row.id) ?? row));
    },
    removeAll(ids) {
      const given = new Set(ids);
      all.value = all.peek().filter(({ id }) => !given.has(id));
      for (const id of ids) send(id, () => store.delete(list, id));
    },
    putBack() {
      const row = removed.peek();
      if (row) put(row);
      return row;
    },
    forgetRemoved() {
      removed.value = null;
    },
    async flush() {
      await last;
      for (const [id, { write }] of unsaved.peek()) send(id, write);
      await last;
    },
  };
}
