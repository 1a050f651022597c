import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Kit } from '../engine/kit/kit';
import type { ShelfContents } from '../store/contents';
import { freshId } from '../store/fresh-id';
import { kitOf } from '../store/kit-of';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../store/records';
import type { StorePort } from '../store/store-port';
import { KIT_PROBLEMS } from '../words/kit-problems';
import { failureWords } from '../words/store-words';
import type { DeskModel } from './desk-model';
import { createKitEdits, type EditResult, type KitEdits, NOT_THERE } from './kit-edits';
import { type KitFigure, kitFigures } from './kit-figure';
import { createKitShelves } from './kit-shelves';

/** A record taken off a shelf that can still be put back. */
export interface Deleted<S extends ShelfName = ShelfName> {
  readonly shelf: S;
  readonly record: Shelves[S];
  readonly wasInPlay: boolean;
}

/** The cues, cloths, ball sets and tables a person keeps, and which of each is in play. */
export interface KitModel extends KitEdits {
  readonly shelves: { readonly [S in ShelfName]: ReadonlySignal<readonly Shelves[S][]> };
  /** The record of each shelf in play. */
  readonly current: { readonly [S in ShelfName]: ReadonlySignal<Shelves[S]> };
  /** What the engine takes, of the records in play. */
  readonly kit: ReadonlySignal<Kit>;
  /** The shelves whose record in play holds nobody's own numbers. */
  readonly defaults: ReadonlySignal<readonly ShelfName[]>;
  /** True while nothing in play is the person's own. */
  readonly isDefault: ReadonlySignal<boolean>;
  /** The last record deleted, while {@link restore} can bring it back. */
  readonly lastDeleted: ReadonlySignal<Deleted | null>;
  /** Why the last change could not be saved, or null. */
  readonly saveProblem: ReadonlySignal<string | null>;
  /** A record by its id, though another tab deleted it; null where it never was there. */
  find<S extends ShelfName>(shelf: S, id: string): Shelves[S] | null;
  /** The numbers of a record as a person reads them; empty where there is no such record. */
  figures(shelf: ShelfName, id: string): readonly KitFigure[];
  choose(shelf: ShelfName, id: string): EditResult;
  /** Takes a record off its shelf; the next one comes into play if it was. Refuses the last one. */
  remove(shelf: ShelfName, id: string): EditResult;
  /** Puts the last deleted record back, into play if it was. */
  restore(): EditResult;
  /** Resolves when every change so far has reached the store or failed. */
  flush(): Promise<void>;
}

export interface KitModelPorts {
  readonly store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>;
  readonly desk: Pick<DeskModel, 'choice' | 'choose' | 'preferences'>;
  /** As loaded; no shelf is empty. */
  readonly shelves: ShelfContents;
  readonly newId?: () => string;
  /** The time of day, ms since 1970. */
  readonly now?: () => number;
}

const OK = { ok: true } as const;
const NOTHING_DELETED = { ok: false, problem: KIT_PROBLEMS.nothingDeleted } as const;

export function createKitModel({
  store,
  desk,
  shelves: loaded,
  newId = freshId,
  now = Date.now,
}: KitModelPorts): KitModel {
  const kept = createKitShelves(store, loaded);
  const { shelves, find } = kept;
  const lastTaken = signal<Pick<Deleted, 'shelf' | 'wasInPlay'> | null>(null);
  const lastDeleted = computed((): Deleted | null => {
    const taken = lastTaken.value;
    const record = taken && kept.takenOff(taken.shelf);
    return record && { ...taken, record };
  });
  const inPlay = <S extends ShelfName>(shelf: S): ReadonlySignal<Shelves[S]> =>
    computed(() => find(shelf, desk.choice.value[shelf]) ?? firstOf(shelves[shelf].value));
  const current = {
    cues: inPlay('cues'),
    cloths: inPlay('cloths'),
    balls: inPlay('balls'),
    tables: inPlay('tables'),
  };

  const defaults = computed(() =>
    SHELF_NAMES.filter((shelf) => current[shelf].value.origin === 'invented'),
  );

  return {
    ...createKitEdits(kept, { newId, now, units: () => desk.preferences.peek() }),
    shelves,
    current,
    find,
    kit: computed(() =>
      kitOf(current.cues.value, current.cloths.value, current.balls.value, current.tables.value),
    ),
    defaults,
    isDefault: computed(() => defaults.value.length === SHELF_NAMES.length),
    lastDeleted,
    saveProblem: kept.saveProblem,
    figures(shelf, id) {
      const record = find(shelf, id);
      return record ? kitFigures(shelf, record, desk.preferences.value) : [];
    },
    choose(shelf, id) {
      if (!find(shelf, id)) return NOT_THERE;
      desk.choose(shelf, id);
      return OK;
    },
    remove(shelf, id) {
      if (!find(shelf, id)) return NOT_THERE;
      const wasInPlay = current[shelf].peek().id === id;
      return batch(() => {
        const takenOff = kept.takeOff(shelf, id);
        if (!takenOff) return { ok: false, problem: failureWords('last-on-shelf') };
        if (wasInPlay) desk.choose(shelf, takenOff.successorId);
        lastTaken.value = { shelf, wasInPlay };
        return OK;
      });
    },
    restore() {
      const deleted = lastDeleted.peek();
      if (!deleted) return NOTHING_DELETED;
      batch(() => {
        kept.putBack(deleted.shelf);
        if (deleted.wasInPlay) desk.choose(deleted.shelf, deleted.record.id);
      });
      return OK;
    },
    flush: kept.flush,
  };
}

function firstOf<T>(records: readonly T[]): T {
  const [first] = records;
  if (first === undefined) throw new RangeError('A shelf must hold at least one record');
  return first;
}
