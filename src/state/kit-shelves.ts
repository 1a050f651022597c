import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Rows, ShelfContents } from '../store/contents';
import { orderShelf } from '../store/order-rows';
import type { ShelfName, Shelves } from '../store/records';
import { type TakenOff, takeOffShelf } from '../store/shelf-changes';
import type { DeleteResult, StorePort } from '../store/store-port';
import { joinRows } from '../store/tabs/join-rows';
import { failureWords } from '../words/store-words';
import { createGoneRows, type GoneRows } from './gone-rows';
import type { ChangeElsewhere } from './kept-rows';

/** What stands on the shelves, on screen first and in the store soon after. */
export interface KitShelves {
  readonly shelves: { readonly [S in ShelfName]: ReadonlySignal<readonly Shelves[S][]> };
  /** Why the last change could not be saved, or null. */
  readonly saveProblem: ReadonlySignal<string | null>;
  /** A record by its id, though another tab deleted it; null where it never was there. */
  find<S extends ShelfName>(shelf: S, id: string): Shelves[S] | null;
  /** Adds a record or takes the place of the one with its id. */
  put<S extends ShelfName>(shelf: S, record: Shelves[S]): void;
  /** Null where the record is not there or is the last. */
  takeOff<S extends ShelfName>(shelf: S, id: string): TakenOff<S> | null;
  /** Tries again what could not be saved; resolves when the store has answered to everything. */
  flush(): Promise<void>;
}

export function createKitShelves(
  store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>,
  loaded: ShelfContents,
): KitShelves {
  const contents = signal(loaded);
  const saveProblem = signal<string | null>(null);
  const gone: { readonly [S in ShelfName]: GoneRows<Shelves[S]> } = {
    cues: createGoneRows(),
    cloths: createGoneRows(),
    balls: createGoneRows(),
    tables: createGoneRows(),
  };
  const unsaved = new Map<string, () => void>();
  let answered: Promise<unknown> = Promise.resolve();

  const show = <S extends ShelfName>(shelf: S, records: readonly Shelves[S][]) => {
    contents.value = { ...contents.peek(), [shelf]: orderShelf(shelf, records) };
  };
  const othersOn = <S extends ShelfName>(shelf: S, id: string): readonly Shelves[S][] =>
    contents.peek()[shelf].filter((record) => record.id !== id);
  const showRecord = <S extends ShelfName>(shelf: S, record: Shelves[S]) => {
    gone[shelf].forget(record.id);
    show(shelf, [...othersOn(shelf, record.id), record]);
  };
  const shown = <S extends ShelfName>(shelf: S, id: string): Shelves[S] | null =>
    contents.value[shelf].find((record) => record.id === id) ?? null;
  const hear = <S extends ShelfName>(shelf: S, { id, was, row }: ChangeElsewhere<Shelves[S]>) => {
    const mine = shown(shelf, id);
    if (row) return showRecord(shelf, mine && was ? joinRows(was, mine, row).row : row);
    if (mine) gone[shelf].note(mine);
    show(shelf, othersOn(shelf, id));
  };
  store.onElsewhere((news) => {
    if (news.kind !== 'row') return;
    if (news.store === 'cues') hear('cues', news);
    if (news.store === 'cloths') hear('cloths', news);
    if (news.store === 'balls') hear('balls', news);
    if (news.store === 'tables') hear('tables', news);
  });
  const follow = async (
    asked: Promise<DeleteResult>,
    again: () => void,
    id: string,
    whenRefused = () => {},
  ) => {
    const result = await asked;
    const isRefused = !result.ok && result.reason === 'last-on-shelf';
    if (result.ok || isRefused) unsaved.delete(id);
    else unsaved.set(id, again);
    // What is not saved yet is told until it is.
    if (!result.ok) saveProblem.value = failureWords(result.reason);
    else if (unsaved.size === 0) saveProblem.value = null;
    if (isRefused) whenRefused();
  };
  const send = (id: string, write: () => Promise<DeleteResult>, whenRefused?: () => void) => {
    const again = () => send(id, write, whenRefused);
    answered = Promise.all([answered, follow(write(), again, id, whenRefused)]);
  };

  return {
    shelves: {
      cues: computed(() => contents.value.cues),
      cloths: computed(() => contents.value.cloths),
      balls: computed(() => contents.value.balls),
      tables: computed(() => contents.value.tables),
    },
    saveProblem,
    find: (shelf, id) => shown(shelf, id) ?? gone[shelf].find(id),
    put(shelf, record) {
      showRecord(shelf, record);
      // Tried again, it is saved as it is by then: another tab may have changed it meanwhile.
      send(record.id, () => store.put(shelf, rowOf(shown(shelf, record.id) ?? record)));
    },
    takeOff(shelf, id) {
      const takenOff = takeOffShelf(contents.peek()[shelf], id);
      if (!takenOff) return null;
      show(shelf, takenOff.rest);
      // Another tab may have emptied the stored shelf meanwhile: then the record comes back.
      send(
        id,
        () => store.delete(shelf, id),
        () => showRecord(shelf, takenOff.taken),
      );
      return takenOff;
    },
    async flush() {
      await answered;
      for (const again of [...unsaved.values()]) again();
      await answered;
    },
  };
}

/** A record is a row of its shelf's store, which types cannot tell for any shelf. */
function rowOf<S extends ShelfName>(record: Shelves[S]): Rows[S] {
  return record as Rows[S];
}
