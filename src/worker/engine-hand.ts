import { type Asked, type Outcome, toldIn } from './engine-messages';

/** The part of a Worker that is used. */
export interface EngineWorker {
  postMessage(asked: Asked): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<unknown>) => void): void;
  addEventListener(type: 'error' | 'messageerror', listener: (event: Event) => void): void;
  terminate(): void;
}

/** Does something every so many milliseconds, until the function it returns is called. */
export type Every = (ms: number, work: () => void) => () => void;

/** A job for a worker. */
export interface Order extends Omit<Asked, 'id'> {
  /** Whether it is worth beginning again. */
  isWanted(): boolean;
  /** Told what became of it; never before it was begun, unless no worker can be had. */
  done(outcome: Outcome): void;
}

/** One worker, for one job at a time. */
export interface EngineHand {
  isFree(): boolean;
  begin(order: Order): void;
}

interface Running {
  readonly order: Order;
  /** This one included. */
  tries: number;
  /** For so many looks in a row nothing was heard. */
  silentLooks: number;
  readonly stopLooking: () => void;
}

/** How often a worker that has a job is looked after, ms. */
const LOOK_MS = 5000;
/**
 * A worker that has said nothing for so many looks is lost: the system may take one away without a
 * word. Looks are counted, not time, for a phone that sleeps wakes up much later in no time.
 */
const SILENT_LOOKS = 6;
const MOST_TRIES = 3;
const LOST: Outcome = { ok: false, message: 'Working this out stopped halfway: try again.' };

/**
 * The worker starts with the first job. One that crashed or fell silent is replaced, and its job done
 * again, each time with twice the patience: it might have been slow.
 */
export function createEngineHand(makeWorker: () => EngineWorker, every: Every): EngineHand {
  let worker: EngineWorker | null = null;
  let running: Running | null = null;
  let id = 0;

  function finish(outcome: Outcome): void {
    const finished = running;
    running = null;
    finished?.stopLooking();
    finished?.order.done(outcome);
  }
  function dismiss(): void {
    worker?.terminate();
    worker = null;
  }
  function lose(): void {
    dismiss();
    if (running === null) return;
    if (running.tries < MOST_TRIES && running.order.isWanted()) {
      running.tries++;
      send(running);
    } else {
      finish(LOST);
    }
  }
  function look(): void {
    if (running === null) return;
    running.silentLooks++;
    if (running.silentLooks > SILENT_LOOKS * 2 ** (running.tries - 1)) lose();
  }
  function hear(data: unknown): void {
    const told = toldIn(data);
    if (told?.id !== id) return;
    if ('ok' in told) finish(told);
    else if (running) running.silentLooks = 0;
  }
  function hired(): EngineWorker {
    const fresh = makeWorker();
    const ifPresent = (act: () => void) => {
      if (worker === fresh) act();
    };
    fresh.addEventListener('message', ({ data }) => ifPresent(() => hear(data)));
    fresh.addEventListener('error', () => ifPresent(lose));
    fresh.addEventListener('messageerror', () => ifPresent(lose));
    return fresh;
  }
  function send(now: Running): void {
    now.silentLooks = 0;
    id++;
    const { name, job } = now.order;
    try {
      worker ??= hired();
      worker.postMessage({ id, name, job });
    } catch {
      dismiss();
      finish(LOST);
    }
  }

  return {
    isFree: () => running === null,
    begin(order) {
      running = { order, tries: 1, silentLooks: 0, stopLooking: every(LOOK_MS, look) };
      send(running);
    },
  };
}
