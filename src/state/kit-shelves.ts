import { computed, type ReadonlySignal } from '@preact/signals';
import type { Rows, ShelfContents } from '../store/contents';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../store/records';
import { type TakenOff, takeOffShelf } from '../store/shelf-changes';
import type { StorePort } from '../store/store-port';
import { createKeptRows, type KeptRows } from './kept-rows';

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
  /** The last record taken off a shelf, while {@link putBack} can bring it back. */
  takenOff<S extends ShelfName>(shelf: S): Shelves[S] | null;
  putBack<S extends ShelfName>(shelf: S): Shelves[S] | null;
  /** Tries again what could not be saved; resolves when the store has answered to everything. */
  flush(): Promise<void>;
}

export function createKitShelves(
  store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>,
  loaded: ShelfContents,
): KitShelves {
  const keep = <S extends ShelfName>(list: S): KeptRows<Rows[S]> =>
    createKeptRows({ store, list }, loaded[list]);
  const kept: { readonly [S in ShelfName]: KeptRows<Rows[S]> } = {
    cues: keep('cues'),
    cloths: keep('cloths'),
    balls: keep('balls'),
    tables: keep('tables'),
  };

  return {
    shelves: {
      cues: kept.cues.all,
      cloths: kept.cloths.all,
      balls: kept.balls.all,
      tables: kept.tables.all,
    },
    saveProblem: computed(() =>
      SHELF_NAMES.reduce<string | null>((found, shelf) => found ?? kept[shelf].problem.value, null),
    ),
    find: (shelf, id) => kept[shelf].find(id),
    put: (shelf, record) => kept[shelf].put(rowOf(record)),
    takeOff(shelf, id) {
      const takenOff = takeOffShelf(kept[shelf].all.peek(), id);
      if (takenOff) kept[shelf].remove(id);
      return takenOff;
    },
    takenOff: (shelf) => kept[shelf].removed.value,
    putBack: (shelf) => kept[shelf].putBack(),
    async flush() {
      await Promise.all(SHELF_NAMES.map((shelf) => kept[shelf].flush()));
    },
  };
}

/** A record is a row of its shelf's store, which types cannot tell for any shelf. */
function rowOf<S extends ShelfName>(record: Shelves[S]): Rows[S] {
  return record as Rows[S];
}
