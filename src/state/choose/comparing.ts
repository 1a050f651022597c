import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { RankQuestion } from '../../engine/plan/refine-way';
import { isSame } from '../../store/same-value';
import { CHOOSE_PROBLEMS } from '../../words/choose-problems';
import type { Work } from '../../worker/engine-pool';
import type { Comparison } from './choose-model';
import { compareWays } from './compare-ways';
import { differenceFor } from './for-most';
import type { RestingWork } from './work-at-rest';

/** Comparisons, of which the last one asked for counts; one is dropped once something else is asked. */
export interface Comparing extends Pick<RestingWork, 'isDue'> {
  readonly comparison: ReadonlySignal<Comparison>;
  /** What the comparison on screen was asked; null where there is none. */
  readonly asked: ReadonlySignal<RankQuestion | null>;
  compare(): void;
  stop(): void;
  /** As if nothing had been compared. */
  forget(): void;
}

type Shown = Omit<Comparison, 'isStale'>;

const NOTHING: Shown = {
  state: 'none',
  progress: 0,
  map: null,
  ways: [],
  difference: null,
  problem: null,
};
const NO_WORKERS = CHOOSE_PROBLEMS.noWorkers;
const FAILED = CHOOSE_PROBLEMS.failed;

/**
 * @param present what would be asked now; null where there is no shot
 * @param whyNot one line on why there is none
 * @param forMost the same question of most players; null where whoever plays is not told apart
 */
export function createComparing(
  present: ReadonlySignal<RankQuestion | null>,
  whyNot: () => string,
  work: Work | null,
  forMost: (asked: RankQuestion) => RankQuestion | null,
): Comparing {
  const shown = signal<Shown>(NOTHING);
  const asked = signal<RankQuestion | null>(null);
  const isAsked = computed(() => isSame(present.value, asked.value));
  const isStale = computed(() => asked.value !== null && !isAsked.value);
  const isRunning = computed(() => shown.value.state === 'running');
  let abort = new AbortController();

  const show = (part: Partial<Shown>) => {
    shown.value = { ...shown.peek(), ...part };
  };
  const run = async (question: RankQuestion, work: Work) => {
    const mine = new AbortController();
    abort = mine;
    const ifWanted = (part: Partial<Shown>) => {
      if (!mine.signal.aborted) show(part);
    };
    try {
      await compareWays(question, work, mine.signal, {
        onProgress: (progress) => ifWanted({ progress }),
        onMap: (map) => ifWanted({ map }),
        onWays: (ways) => ifWanted({ ways }),
      });
      ifWanted({ state: 'done', progress: 1 });
    } catch {
      ifWanted({ state: 'failed', problem: FAILED });
      mine.abort();
    }
    await tellDifference(question, work, mine.signal);
  };
  const tellDifference = async (question: RankQuestion, work: Work, signal: AbortSignal) => {
    const most = forMost(question);
    if (signal.aborted || most === null) return;
    try {
      const difference = await differenceFor(most, shown.peek().ways, work, signal);
      if (!signal.aborted) show({ difference });
    } catch {
      // The ways are there all the same.
    }
  };
  const forget = () => {
    abort.abort();
    asked.value = null;
    shown.value = NOTHING;
  };
  // Only while it runs: what would be asked is not worked out anew for every move of a ball.
  effect(() => {
    if (isRunning.value && isStale.value) forget();
  });

  return {
    isDue: () => present.value !== null && !isAsked.value,
    comparison: computed(() => ({ ...shown.value, isStale: isStale.value })),
    asked,
    compare() {
      const question = present.peek();
      if (work === null || question === null) {
        show({ problem: work === null ? NO_WORKERS : whyNot() });
        return;
      }
      abort.abort();
      asked.value = question;
      shown.value = { ...NOTHING, state: 'running' };
      void run(question, work);
    },
    stop() {
      if (shown.peek().state !== 'running') return;
      abort.abort();
      show({ state: 'stopped' });
    },
    forget,
  };
}
