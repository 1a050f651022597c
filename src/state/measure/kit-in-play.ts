import { computed, type ReadonlySignal } from '@preact/signals';
import type { ShelfContents } from '../../store/contents';
import type { Choice, ShelfName } from '../../store/records';
import type { KitInPlay } from '../kit-in-play';
import { type Played, playedWith, type Records } from './parts-played';

/** The records in play, as they are now. */
export function kitInPlay({ current }: Pick<KitInPlay, 'current'>): ReadonlySignal<Played> {
  return computed(() => playedWith(valuesNow<Records>(current)));
}

/** All that stands on the shelves. */
export function shelvesNow({ shelves }: Pick<KitInPlay, 'shelves'>): ReadonlySignal<ShelfContents> {
  return computed(() => valuesNow<ShelfContents>(shelves));
}

/** What the signal of each shelf holds. */
function valuesNow<T extends { readonly [S in ShelfName]: unknown }>(
  signals: {
    readonly [S in ShelfName]: ReadonlySignal<T[S]>;
  },
): { readonly [S in ShelfName]: T[S] } {
  return {
    cues: signals.cues.value,
    cloths: signals.cloths.value,
    balls: signals.balls.value,
    tables: signals.tables.value,
  };
}

/** The ids of records. */
export function choiceOf({ cues, cloths, balls, tables }: Records): Choice {
  return { cues: cues.id, cloths: cloths.id, balls: balls.id, tables: tables.id };
}
