import { vi } from 'vitest';

/** A service worker that turns what it is told to, and notes what it is asked. */
export class FakeWorker extends EventTarget {
  state = 'installing';
  readonly asked: unknown[] = [];
  postMessage(message: unknown) {
    this.asked.push(message);
  }
  become(state: string) {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

/** A registration whose workers come when a test says so. */
export class FakeRegistration extends EventTarget {
  active: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  installing: FakeWorker | null = null;
  readonly update = vi.fn(async () => undefined);

  startInstalling(): FakeWorker {
    this.installing = new FakeWorker();
    this.dispatchEvent(new Event('updatefound'));
    return this.installing;
  }
}
