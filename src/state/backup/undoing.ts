import { type ReadonlySignal, signal } from '@preact/signals';
import { type ExchangeFailure, type ExchangePorts, exchange } from './exchange';
import type { UndoneMark } from './undone-mark';

/** The last time that everything was exchanged for something else. */
export interface LastExchange {
  readonly atMs: number;
  /** Whether that was an undoing itself, so that undoing it brings the backup in again. */
  readonly wasUndoing: boolean;
}

/** Taking an import back, and taking that back. */
export interface Undoing {
  /** Null where there is nothing to undo, or before {@link look}. */
  readonly last: ReadonlySignal<LastExchange | null>;
  /** Why it could not be undone, or null. */
  readonly problem: ReadonlySignal<ExchangeFailure | null>;
  /** Finds out what there is to undo. */
  look(): Promise<void>;
  undo(): Promise<void>;
}

export interface UndoingPorts extends ExchangePorts {
  readonly undone: UndoneMark;
}

export function createUndoing(ports: UndoingPorts): Undoing {
  const { undone } = ports;
  const { store } = ports.gate;
  const last = signal<LastExchange | null>(null);
  const problem = signal<ExchangeFailure | null>(null);

  return {
    last,
    problem,
    async look() {
      const atMs = await store.lastImportMs();
      last.value = atMs === null ? null : { atMs, wasUndoing: undone.read() === atMs };
    },
    async undo() {
      const wasUndoing = last.peek()?.wasUndoing ?? false;
      const done = await exchange(ports, async () => {
        const result = await store.undoImport();
        if (result.ok) undone.write(wasUndoing ? null : await store.lastImportMs());
        return result;
      });
      problem.value = done.ok ? null : done.reason;
    },
  };
}
