import { type Asked, type Outcome, toldIn } from './engine-messages';

/** The part of a Worker that is used. */
export interface EngineWorker {
  postMessage(asked: Asked): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<unknown>) => void): void;
  addEventListener(type: 'error' | 'messageerror', listener: (event: Event) => void): void;
  terminate(): void;
}

/** One worker, for one job at a time. */
export interface EngineHand {
  isFree(): boolean;
  /** @param done told what became of it; never before this returns, unless no worker can be had */
  begin(job: Omit<Asked, 'id'>, done: (outcome: Outcome) => void): void;
}

const CRASHED: Outcome = { ok: false, message: 'Working this out stopped halfway: try again.' };

/** The worker starts with the first job, and anew after it crashed. */
export function createEngineHand(makeWorker: () => EngineWorker): EngineHand {
  let worker: EngineWorker | null = null;
  let running: ((outcome: Outcome) => void) | null = null;
  let id = 0;

  function finish(outcome: Outcome): void {
    const done = running;
    running = null;
    done?.(outcome);
  }
  function crash(): void {
    worker?.terminate();
    worker = null;
    finish(CRASHED);
  }
  function hear(data: unknown): void {
    const told = toldIn(data);
    if (told?.id === id) finish(told);
  }
  function hired(): EngineWorker {
    const fresh = makeWorker();
    const crashIfPresent = () => {
      if (worker === fresh) crash();
    };
    fresh.addEventListener('message', ({ data }) => hear(data));
    fresh.addEventListener('error', crashIfPresent);
    fresh.addEventListener('messageerror', crashIfPresent);
    return fresh;
  }

  return {
    isFree: () => running === null,
    begin(job, done) {
      running = done;
      id += 1;
      try {
        worker ??= hired();
        worker.postMessage({ id, ...job });
      } catch {
        crash();
      }
    },
  };
}
