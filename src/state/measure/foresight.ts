import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { ReadingReport } from '../../engine/fit/shot-report';
import type { WorkOut } from './find-priors';
import type { MeasureQuestion } from './measure-question';
import { type Foresee, workForesight } from './work-report';

/** The readings of an attempt beside what those begun before it led to expect. */
export interface Foreseen {
  readonly id: string;
  readonly readings: readonly ReadingReport[];
}

export interface ForesightPorts {
  readonly question: ReadonlySignal<MeasureQuestion>;
  /** Whether that is worked out: nothing is asked while it is not, lest one work overtake the other. */
  readonly isFresh: ReadonlySignal<boolean>;
  /** Null where nothing can be worked out beside the page. */
  readonly workOut: WorkOut | null;
  readonly foresee: Foresee | null;
}

/** Works out what was to be expected of one attempt at a time. */
export interface Foresight {
  /** Of the last one that was worked out; null before the first. */
  readonly foreseen: ReadonlySignal<Foreseen | null>;
  /** Asks for that of an attempt, anew whenever the readings change. */
  foresee(id: string): void;
  /** Stops watching. */
  dispose(): void;
}

export function createForesight({
  question,
  isFresh,
  workOut,
  foresee,
}: ForesightPorts): Foresight {
  const foreseen = signal<Foreseen | null>(null);
  if (workOut === null || foresee === null) return { foreseen, foresee() {}, dispose() {} };
  const asked = signal<string | null>(null);

  const work = async (id: string, of: MeasureQuestion) => {
    const isWanted = () => asked.peek() === id && question.peek() === of;
    const whileWanted: WorkOut = (job) =>
      isWanted() ? workOut(job) : Promise.reject(new Error('Something newer was asked.'));
    try {
      const readings = await workForesight(of, id, whileWanted, foresee);
      if (readings !== null && isWanted()) foreseen.value = { id, readings };
    } catch {
      // Nothing is expected, then: the readings stand by themselves.
    }
  };

  const dispose = effect(() => {
    const id = asked.value;
    if (id !== null && isFresh.value) void work(id, question.value);
  });
  return {
    foreseen,
    foresee(id) {
      asked.value = id;
    },
    dispose,
  };
}
