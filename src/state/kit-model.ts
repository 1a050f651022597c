import { batch, computed, type ReadonlySignal, signal, untracked } from '@preact/signals';
import { freshId } from '../store/fresh-id';
import type { ShelfName, Shelves } from '../store/records';
import { failureWords } from '../words/failure-words';
import { KIT_PROBLEMS } from '../words/kit-problems';
import type { DeskModel } from './desk-model';
import { type EditResult, NOT_THERE } from './edit-result';
import type { FigureSetting } from './figure-field';
import { createKitEdits, type KitEdits } from './kit-edits';
import { type KitFigure, kitFigures } from './kit-figure';
import type { createKitInPlay, KitInPlay } from './kit-in-play';

/** A record taken off a shelf that can still be put back. */
export interface Deleted<S extends ShelfName = ShelfName> {
  readonly shelf: S;
  readonly record: Shelves[S];
  readonly wasInPlay: boolean;
}

/** The cues, cloths, ball sets and tables a person keeps, and which of each is in play. */
export interface KitModel extends KitInPlay, KitEdits {
  /** The last record deleted, while {@link restore} can bring it back. */
  readonly lastDeleted: ReadonlySignal<Deleted | null>;
  /** Why the last change could not be saved, or null. */
  readonly saveProblem: ReadonlySignal<string | null>;
  /** The numbers of a record as a person reads them; empty where there is no such record. */
  figures(shelf: ShelfName, id: string): readonly KitFigure[];
  choose(shelf: ShelfName, id: string): EditResult;
  /** Takes a record off its shelf; the next one comes into play if it was. Refuses the last one. */
  remove(shelf: ShelfName, id: string): EditResult;
  /** Puts the last deleted record back, into play if it was. */
  restore(): EditResult;
}

export interface KitModelPorts {
  readonly desk: Pick<DeskModel, 'choose' | 'preferences'>;
  readonly newId?: () => string;
  /** The time of day, ms since 1970. */
  readonly now?: () => number;
}

const OK = { ok: true } as const;
const NOTHING_DELETED = { ok: false, problem: KIT_PROBLEMS.nothingDeleted } as const;

/** Every way to change what stands on the shelves, over what is in play. */
export function createKitModel(
  inPlay: ReturnType<typeof createKitInPlay>,
  { desk, newId = freshId, now = Date.now }: KitModelPorts,
): KitModel {
  const { kept, current, find, inPlay: records } = inPlay;
  const lastTaken = signal<Pick<Deleted, 'shelf' | 'wasInPlay'> | null>(null);
  const lastDeleted = computed((): Deleted | null => {
    const taken = lastTaken.value;
    const record = taken && kept.takenOff(taken.shelf);
    return record && { ...taken, record };
  });
  const figureSetting = (): FigureSetting => ({
    inPlay: records.value,
    units: desk.preferences.value,
  });

  return {
    ...createKitEdits(kept, { newId, now, setting: () => untracked(figureSetting) }),
    ...inPlay,
    lastDeleted,
    saveProblem: kept.saveProblem,
    figures(shelf, id) {
      const record = find(shelf, id);
      return record ? kitFigures(shelf, record, figureSetting()) : [];
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
  };
}
