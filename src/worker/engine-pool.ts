import { createEngineHand, type EngineWorker, type Every, type Order } from './engine-hand';
import type { JobName, JobOf, ResultOf } from './engine-work';

/**
 * Works a job out beside the page. Rejected where that could not be done, by several workers if need
 * be, and as soon as it is no longer wanted.
 */
export type Work = <N extends JobName>(
  name: N,
  job: JobOf<N>,
  signal?: AbortSignal,
) => Promise<ResultOf<N>>;

interface Task extends Order {
  /** No longer wanted. */
  drop(reason: unknown): void;
}

/**
 * Deals jobs to workers in the order in which they were asked for. One that is no longer wanted is
 * not begun; if it is being worked out, its worker finishes it in vain: jobs are short.
 *
 * @param size how many workers there may be; each starts when it is first needed
 * @param every the clock by which a worker that fell silent is noticed
 */
export function createEnginePool(
  makeWorker: () => EngineWorker,
  size: number,
  every = everyByClock,
): Work {
  const hands = Array.from({ length: size }, () => createEngineHand(makeWorker, every));
  const waiting = new Set<Task>();
  const unlessAborted = byAborting();

  function deal(): void {
    for (const task of waiting) {
      const hand = hands.find((one) => one.isFree());
      if (hand === undefined) return;
      waiting.delete(task);
      hand.begin(task);
    }
  }

  return <N extends JobName>(name: N, job: JobOf<N>, signal?: AbortSignal) =>
    new Promise<ResultOf<N>>((resolve, reject) => {
      if (signal?.aborted) return reject(signal.reason);
      const task: Task = {
        name,
        job,
        isWanted: () => !signal?.aborted,
        done(outcome) {
          if (outcome.ok) resolve(outcome.result as ResultOf<N>);
          else reject(new Error(outcome.message));
          deal();
        },
        drop(reason) {
          waiting.delete(task);
          reject(reason);
        },
      };
      if (signal) unlessAborted(signal, task);
      waiting.add(task);
      deal();
    });
}

const everyByClock: Every = (ms, work) => {
  const timer = setInterval(work, ms);
  return () => clearInterval(timer);
};

/** Has a task dropped once a signal says so; of a signal for many tasks, one listener hears it. */
function byAborting(): (signal: AbortSignal, task: Task) => void {
  const tasksOf = new WeakMap<AbortSignal, Task[]>();
  return (signal, task) => {
    const known = tasksOf.get(signal);
    if (known) {
      known.push(task);
      return;
    }
    const tasks = [task];
    tasksOf.set(signal, tasks);
    signal.addEventListener('abort', () => {
      for (const one of tasks) one.drop(signal.reason);
    });
  };
}
