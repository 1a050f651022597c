import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { WriteResult } from '../store/store-port';

interface WithId {
  readonly id: string;
}

/** Rows of one store, on screen first and in the store soon after. */
export interface KeptRows<T extends WithId> {
  readonly all: ReadonlySignal<readonly T[]>;
  /** Why something is on screen and not in the store, or null. */
  readonly problem: ReadonlySignal<string | null>;
  find(id: string): T | null;
  /** Adds a row or takes the place of the one with its id. */
  put(row: T): void;
  /** The same, on screen alone: it is in the store once it was put. */
  show(row: T): void;
  remove(id: string): void;
  /** Tries again what could not be saved; resolves when the store has answered to everything. */
  flush(): Promise<void>;
}

/** How rows are kept. */
export interface RowsPorts<T> {
  put(row: T): Promise<WriteResult>;
  delete(id: string): Promise<WriteResult>;
  /** In which order they are shown. */
  order(rows: readonly T[]): readonly T[];
}

/** A change that has not reached the store: what to try again, and why it failed. */
interface Unsaved {
  readonly write: () => Promise<WriteResult>;
  readonly message: string;
}

/** Writes go to the store one by one, in the order in which they were asked for. */
export function createKeptRows<T extends WithId>(
  ports: RowsPorts<T>,
  loaded: readonly T[],
): KeptRows<T> {
  const all = signal(loaded);
  const unsaved = signal<ReadonlyMap<string, Unsaved>>(new Map());
  let last: Promise<void> = Promise.resolve();

  const note = (id: string, failed: Unsaved | null) => {
    const rest = [...unsaved.peek()].filter(([other]) => other !== id);
    unsaved.value = new Map(failed === null ? rest : [...rest, [id, failed]]);
  };
  const queue = (id: string, write: () => Promise<WriteResult>) => {
    last = last.then(async () => {
      const result = await write();
      note(id, result.ok ? null : { write, message: result.message });
    });
  };
  const others = (id: string) => all.peek().filter((row) => row.id !== id);
  const show = (row: T) => {
    all.value = ports.order([...others(row.id), row]);
  };

  return {
    all,
    problem: computed(() => [...unsaved.value.values()].at(-1)?.message ?? null),
    find: (id) => all.value.find((row) => row.id === id) ?? null,
    put(row) {
      show(row);
      queue(row.id, () => ports.put(row));
    },
    show,
    remove(id) {
      all.value = others(id);
      queue(id, () => ports.delete(id));
    },
    async flush() {
      await last;
      for (const [id, { write }] of unsaved.peek()) queue(id, write);
      await last;
    },
  };
}
