import type { EngineWorker } from '../../../src/worker/engine-hand';
import type { Asked, Told } from '../../../src/worker/engine-messages';

/** A worker that answers when told to. */
export interface FakeWorker extends EngineWorker {
  readonly asked: Asked[];
  readonly isTerminated: () => boolean;
  /** Sends whatever stands here, as a worker would. */
  say(data: unknown): void;
  fail(type: 'error' | 'messageerror'): void;
}

/** What cannot be sent to a worker is refused, as a browser refuses it. */
function fakeWorker(): FakeWorker {
  const asked: Asked[] = [];
  const ears = new Map<string, (event: MessageEvent<unknown>) => void>();
  let terminated = false;
  return {
    asked,
    isTerminated: () => terminated,
    postMessage: (message) => void asked.push(structuredClone(message)),
    addEventListener: (type: string, ear: (event: MessageEvent<unknown>) => void) => {
      ears.set(type, ear);
    },
    terminate: () => {
      terminated = true;
    },
    say: (data) => ears.get('message')?.(new MessageEvent('message', { data })),
    fail: (type) => ears.get(type)?.(new MessageEvent(type)),
  };
}

/** Workers as they are hired, and every one of them so far. */
export function workshop() {
  const hired: FakeWorker[] = [];
  const make = () => {
    const worker = fakeWorker();
    hired.push(worker);
    return worker;
  };
  return { hired, make };
}

/** Answers the last thing a worker was asked, by what it was asked. */
export function answer(worker: FakeWorker | undefined, work: (job: unknown) => unknown): void {
  const last = worker?.asked.at(-1);
  if (!worker || !last) throw new Error('nothing was asked');
  worker.say({ id: last.id, ok: true, result: work(last.job) } satisfies Told);
}
