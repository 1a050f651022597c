import { type ReadonlySignal, signal } from '@preact/signals';
import type { StorePort } from '../../store/store-port';
import { LISTS } from '../../store/stores';

/**
 * A store whose writes can be held back: between an import and the next load, what is on screen is
 * out of date and must not be saved.
 */
export interface SaveGate {
  /** What everybody writes through. */
  readonly store: StorePort;
  /** How many writes were answered so far. */
  readonly answered: ReadonlySignal<number>;
  /** Holds every write back from now on. */
  close(): void;
  /** Lets through what was held back, in the order in which it was asked for. */
  open(): void;
}

/** Told of whatever is about to be written to the store, and of each row that was answered. */
export interface WriteWatch {
  beforeWrite(): void;
  /** Not called after what puts the page out of date, such as an import. */
  afterWrite(): void;
}

const NOBODY: WriteWatch = { beforeWrite() {}, afterWrite() {} };

/** @param whenOwn called in the tap that saves a reading or a number of the person's own */
export function createSaveGate(
  store: StorePort,
  whenOwn: () => void = () => {},
  { beforeWrite, afterWrite }: WriteWatch = NOBODY,
): SaveGate {
  const answered = signal(0);
  let held: (() => void)[] | null = null;

  const pass = (write: () => void) => {
    if (held) held.push(write);
    else write();
  };
  const through = <R>(write: () => Promise<R>) =>
    new Promise<R>((resolve) => {
      pass(async () => {
        beforeWrite();
        const result = await write();
        afterWrite();
        answered.value += 1;
        resolve(result);
      });
    });

  return {
    store: {
      // It is known only once the store was loaded.
      get keeps() {
        return store.keeps;
      },
      loadAll: store.loadAll,
      put(list, row) {
        if (LISTS[list].isOwn(row)) whenOwn();
        return through(() => store.put(list, row));
      },
      delete: (list, id) => through(() => store.delete(list, id)),
      saveDesk: (desk) => through(() => store.saveDesk(desk)),
      draftDesk: (desk) =>
        pass(() => {
          beforeWrite();
          store.draftDesk(desk);
          afterWrite();
        }),
      saveUnsaved: () => through(() => store.saveUnsaved()),
      // Those of a store that has nothing to keep things in take the place of these as it loads.
      readAll: () => store.readAll(),
      importBackup(plan) {
        beforeWrite();
        return store.importBackup(plan);
      },
      lastImportMs: () => store.lastImportMs(),
      undoImport() {
        beforeWrite();
        return store.undoImport();
      },
      formerCopies: () => store.formerCopies(),
      onNotice: store.onNotice,
      onElsewhere: (listener) => store.onElsewhere(listener),
      answerElsewhere(...answer) {
        beforeWrite();
        store.answerElsewhere(...answer);
      },
    },
    answered,
    close() {
      held ??= [];
    },
    open() {
      const waiting = held ?? [];
      held = null;
      for (const write of waiting) write();
    },
  };
}
