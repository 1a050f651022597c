import { computed, type ReadonlySignal } from '@preact/signals';
import type { ShelfContents } from '../../store/contents';
import type { Choice } from '../../store/records';
import type { KitInPlay } from '../kit-in-play';
import { type Played, playedWith, type Records } from './parts-played';

/** What is in play, as it is now. */
export function kitInPlay({ inPlay }: Pick<KitInPlay, 'inPlay'>): ReadonlySignal<Played> {
  return computed(() => playedWith(inPlay.value));
}

/** All that stands on the shelves. */
export function shelvesNow({ shelves }: Pick<KitInPlay, 'shelves'>): ReadonlySignal<ShelfContents> {
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
