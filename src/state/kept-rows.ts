import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { DeleteResult, StoreFailure, WriteResult } from '../store/store-port';
import { joinRows } from '../store/tabs/join-rows';
import { failureWords } from '../words/store-words';
import { createGoneRows } from './gone-rows';

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
  /** Takes in what another tab did to a row. */
  hear(change: ChangeElsewhere<T>): void;
  /** Tries again what could not be saved; resolves when the store has answered to everything. */
  flush(): Promise<void>;
}

/** What another tab did to a row: see {@link RowChange}. */
export interface ChangeElsewhere<T> {
  readonly id: string;
  readonly was: T | null;
  readonly row: T | null;
}

/** How rows are kept. */
export interface RowsPorts<T> {
  put(row: T): Promise<WriteResult>;
  delete(id: string): Promise<DeleteResult>;
  /** In which order they are shown. */
  order(rows: readonly T[]): readonly T[];
}

/** A change that has not reached the store: what to try again, and why it failed. */
interface Unsaved {
  readonly write: () => Promise<DeleteResult>;
  readonly reason: StoreFailure;
}

/** Writes go to the store at once, and count as answered in the order in which they were asked for. */
export function createKeptRows<T extends WithId>(
  ports: RowsPorts<T>,
  loaded: readonly T[],
): KeptRows<T> {
  const all = signal(loaded);
  const gone = createGoneRows<T>();
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
  const others = (id: string) => all.peek().filter((row) => row.id !== id);
  const show = (row: T) => {
    gone.forget(row.id);
    all.value = ports.order([...others(row.id), row]);
  };
  const shown = (id: string) => all.value.find((row) => row.id === id) ?? null;

  return {
    all,
    problem: computed(() => {
      const reason = [...unsaved.value.values()].at(-1)?.reason ?? refused.value;
      return reason && failureWords(reason);
    }),
    find: (id) => shown(id) ?? gone.find(id),
    put(row) {
      show(row);
      // Tried again, it is saved as it is by then: another tab may have changed it meanwhile.
      send(row.id, () => ports.put(shown(row.id) ?? row));
    },
    show,
    remove(id) {
      const removed = shown(id);
      all.value = others(id);
      send(
        id,
        () => ports.delete(id),
        () => removed && show(removed),
      );
    },
    hear({ id, was, row }) {
      const mine = shown(id);
      if (row !== null) return show(mine && was ? joinRows(was, mine, row).row : row);
      if (mine) gone.note(mine);
      all.value = others(id);
    },
    async flush() {
      await last;
      for (const [id, { write }] of unsaved.peek()) send(id, write);
      await last;
    },
  };
}
