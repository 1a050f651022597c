import { computed, type ReadonlySignal } from '@preact/signals';
import type { Kit } from '../engine/kit/kit';
import type { ShelfContents } from '../store/contents';
import { kitOf } from '../store/kit-of';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../store/records';
import type { StorePort } from '../store/store-port';
import type { DeskModel } from './desk-model';
import { createKitShelves, type KitShelves } from './kit-shelves';
import type { Records } from './measure/parts-played';

/** What stands on the shelves, and which of it is in play. */
export interface KitInPlay {
  readonly shelves: { readonly [S in ShelfName]: ReadonlySignal<readonly Shelves[S][]> };
  /** The record of each shelf in play. */
  readonly current: { readonly [S in ShelfName]: ReadonlySignal<Shelves[S]> };
  /** All of these at once. */
  readonly inPlay: ReadonlySignal<Records>;
  /** What the engine takes, of the records in play. */
  readonly kit: ReadonlySignal<Kit>;
  /** The shelves whose record in play holds nobody's own numbers. */
  readonly defaults: ReadonlySignal<readonly ShelfName[]>;
  /** True while nothing in play is the person's own. */
  readonly isDefault: ReadonlySignal<boolean>;
  /** A record by its id, though another tab deleted it; null where it never was there. */
  find<S extends ShelfName>(shelf: S, id: string): Shelves[S] | null;
  /** Resolves when every change so far has reached the store or failed. */
  flush(): Promise<void>;
}

export interface KitInPlayPorts {
  readonly store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>;
  readonly desk: Pick<DeskModel, 'choice'>;
  /** As loaded; no shelf is empty. */
  readonly shelves: ShelfContents;
}

/** With the shelves as whoever changes them needs them. */
export function createKitInPlay({
  store,
  desk,
  shelves: loaded,
}: KitInPlayPorts): KitInPlay & { readonly kept: KitShelves } {
  const kept = createKitShelves(store, loaded);
  const { shelves, find } = kept;
  const played = <S extends ShelfName>(shelf: S): ReadonlySignal<Shelves[S]> =>
    computed(() => find(shelf, desk.choice.value[shelf]) ?? firstOf(shelves[shelf].value));
  const current = {
    cues: played('cues'),
    cloths: played('cloths'),
    balls: played('balls'),
    tables: played('tables'),
  };

  const records = computed<Records>(() => ({
    cues: current.cues.value,
    cloths: current.cloths.value,
    balls: current.balls.value,
    tables: current.tables.value,
  }));
  const defaults = computed(() =>
    SHELF_NAMES.filter((shelf) => current[shelf].value.origin === 'invented'),
  );

  return {
    shelves,
    current,
    inPlay: records,
    find,
    kit: computed(() => {
      const { cues, cloths, balls, tables } = records.value;
      return kitOf(cues, cloths, balls, tables);
    }),
    defaults,
    isDefault: computed(() => defaults.value.length === SHELF_NAMES.length),
    flush: kept.flush,
    kept,
  };
}

function firstOf<T>(records: readonly T[]): T {
  const [first] = records;
  if (first === undefined) throw new RangeError('A shelf must hold at least one record');
  return first;
}
