import { batch, computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { PLAYER_PROBLEMS } from '../../words/player-problems';
import type { NotedPlayers } from './noted-players';
import { isUntold, type PlayerQuestion } from './player-question';

export interface LearntPorts<Learnt> {
  readonly question: ReadonlySignal<PlayerQuestion>;
  /** Learns beside the page; null where the browser cannot. */
  readonly learn: ((question: PlayerQuestion) => Promise<Learnt>) | null;
  readonly noted: NotedPlayers<Learnt>;
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
}

/** What is learnt of whoever plays. */
export interface LearntAtRest<Learnt> {
  /** The latest there is of them; null where nothing is. */
  readonly learnt: ReadonlySignal<Learnt | null>;
  /** Whether that is of all there is to learn from. */
  readonly isFresh: ReadonlySignal<boolean>;
  readonly problem: ReadonlySignal<string | null>;
  /** Stops watching. */
  dispose(): void;
}

/**
 * Learns a moment after the last change, at rest. What was noted of this very question spares the work,
 * and so does a question with nothing in it.
 */
export function createLearntAtRest<Learnt>(ports: LearntPorts<Learnt>): LearntAtRest<Learnt> {
  const { question, learn, noted, later } = ports;
  const told = signal<{ question: PlayerQuestion; learnt: Learnt } | null>(null);
  const failed = signal<PlayerQuestion | null>(null);
  const tell = (asked: PlayerQuestion, learnt: Learnt) => {
    if (question.peek() === asked) told.value = { question: asked, learnt };
  };
  const work = async (asked: PlayerQuestion) => {
    try {
      const learnt = await learn?.(asked);
      if (learnt === undefined) return;
      noted.keep(asked, learnt);
      tell(asked, learnt);
    } catch {
      failed.value = asked;
    }
  };

  let callOff = () => {};
  const stop = effect(() => {
    const asked = question.value;
    callOff();
    callOff = () => {};
    if (isUntold(asked) || told.peek()?.question === asked) return;
    const recalled = noted.recall(asked);
    if (recalled !== null) batch(() => tell(asked, recalled));
    else if (learn !== null) callOff = later(() => void work(asked));
  });
  const present = computed(() => {
    const asked = question.value;
    if (isUntold(asked)) return null;
    // What was learnt of them from less stands until more is.
    return told.value?.question.playerId === asked.playerId ? told.value : null;
  });
  return {
    learnt: computed(() => present.value?.learnt ?? null),
    isFresh: computed(() => isUntold(question.value) || present.value?.question === question.value),
    problem: computed(() => {
      if (isUntold(question.value)) return null;
      if (learn === null) return PLAYER_PROBLEMS.noWorkers;
      return failed.value === question.value ? PLAYER_PROBLEMS.notLearnt : null;
    }),
    dispose() {
      callOff();
      stop();
    },
  };
}
