import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { PocketChance, PocketsQuestion } from '../../engine/plan/pocket-chances';
import type { PocketName } from '../../engine/table/pocket-shape';
import { isSame } from '../../store/same-value';
import type { Work } from '../../worker/engine-pool';
import type { RestingWork } from './work-at-rest';

export type PocketChances = ReadonlyMap<PocketName, PocketChance>;

const NONE: PocketChances = new Map();

/** The chance of each pocket for the ball to be played. */
export interface AllPockets extends RestingWork {
  /** Null while they are not known of what would be asked now; empty where they cannot be had. */
  readonly chances: ReadonlySignal<PocketChances | null>;
}

/**
 * What is asked next supersedes what is still being worked out.
 * @param present what would be asked now; null while there is no ball to be played
 */
export function createAllPockets(
  present: ReadonlySignal<PocketsQuestion | null>,
  work: Work | null,
): AllPockets {
  const asked = signal<PocketsQuestion | null>(null);
  const told = signal<PocketChances | null>(null);
  let abort = new AbortController();
  const isAsked = computed(() => isSame(present.value, asked.value));
  const ask = async (question: PocketsQuestion, work: Work, wanted: AbortSignal) => {
    // A pocket can be chosen without.
    const chances = await work('pockets', question, wanted).catch(() => []);
    if (!wanted.aborted) told.value = new Map(chances.map((one) => [one.pocket, one]));
  };

  return {
    chances: computed(() => {
      if (work === null) return NONE;
      return isAsked.value ? told.value : null;
    }),
    isDue: () => work !== null && present.value !== null && !isAsked.value,
    begin() {
      const question = present.peek();
      if (work === null || question === null) return;
      abort.abort();
      abort = new AbortController();
      asked.value = question;
      told.value = null;
      void ask(question, work, abort.signal);
    },
  };
}
