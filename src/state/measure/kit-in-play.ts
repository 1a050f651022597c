import { computed, type ReadonlySignal } from '@preact/signals';
import type { ShelfContents } from '../../store/contents';
import type { Choice } from '../../store/records';
import type { KitModel } from '../kit-model';
import { type Played, playedWith, type Records } from './parts-played';

/** The records in play, as they are now. */
export function kitInPlay({ current }: Pick<KitModel, 'current'>): ReadonlySignal<Played> {
  return computed(() =>
    playedWith({
      cues: current.cues.value,
      cloths: current.cloths.value,
      balls: current.balls.value,
      tables: current.tables.value,
    }),
  );
}

/** All that stands on the shelves. */
export function shelvesNow({ shelves }: Pick<KitModel, 'shelves'>): ReadonlySignal<ShelfContents> {
  return computed(() => ({
    cues: shelves.cues.value,
    cloths: shelves.cloths.value,
    balls: shelves.balls.value,
    tables: shelves.tables.value,
  }));
}

/** The ids of records. */
export function choiceOf({ cues, cloths, balls, tables }: Records): Choice {
  return { cues: cues.id, cloths: cloths.id, balls: balls.id, tables: tables.id };
}
