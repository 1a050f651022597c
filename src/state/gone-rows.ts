import { signal } from '@preact/signals';

interface WithId {
  readonly id: string;
}

/** Rows that another tab deleted, as they last were: one of them may still be in hand here. */
export interface GoneRows<T extends WithId> {
  find(id: string): T | null;
  note(row: T): void;
  forget(id: string): void;
}

export function createGoneRows<T extends WithId>(): GoneRows<T> {
  const rows = signal<readonly T[]>([]);
  const others = (id: string) => rows.peek().filter((row) => row.id !== id);
  return {
    find: (id) => rows.value.find((row) => row.id === id) ?? null,
    note(row) {
      rows.value = [...others(row.id), row];
    },
    forget(id) {
      if (rows.peek().length > 0) rows.value = others(id);
    },
  };
}
