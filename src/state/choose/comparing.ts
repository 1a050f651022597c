import { computed, type ReadonlySignal } from '@preact/signals';
import type { RankQuestion } from '../../engine/plan/refine-way';
import { CHOOSE_PROBLEMS } from '../../words/choose-problems';
import type { Work } from '../../worker/engine-pool';
import { createAsking } from './asking';
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
  const asking = createAsking<RankQuestion, Shown>(present, NOTHING);
  const { shown, asked, show } = asking;
  const run = async (question: RankQuestion, work: Work) => {
    const wanted = asking.begin(question, { ...NOTHING, state: 'running' });
    try {
      await compareWays(question, work, wanted.signal, {
        onProgress: (progress) => wanted.show(() => ({ progress })),
        onMap: (map) => wanted.show(() => ({ map })),
        onWays: (ways) => wanted.show(() => ({ ways })),
      });
      wanted.show(() => ({ state: 'done', progress: 1 }));
    } catch {
      wanted.show(() => ({ state: 'failed', problem: FAILED }));
      wanted.drop();
    }
    await tellDifference(question, work, wanted.signal);
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
  return {
    isDue: () => present.value !== null && !asking.isAsked.value,
    comparison: computed(() => ({ ...shown.value, isStale: asking.isStale.value })),
    asked,
    compare() {
      const question = present.peek();
      if (work === null || question === null) {
        show({ problem: work === null ? NO_WORKERS : whyNot() });
        return;
      }
      void run(question, work);
    },
    stop: asking.stop,
    forget: asking.forget,
  };
}
