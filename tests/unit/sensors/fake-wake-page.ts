import { vi } from 'vitest';

/** A lock as the browser hands it out: released, it says so. */
class FakeLock extends EventTarget {
  isHeld = true;
  readonly release = vi.fn(async () => {
    this.takeBack();
  });
  takeBack() {
    this.isHeld = false;
    this.dispatchEvent(new Event('release'));
  }
}

class FakeDocument extends EventTarget {
  visibilityState: DocumentVisibilityState = 'visible';
  turn(visibility: DocumentVisibilityState) {
    this.visibilityState = visibility;
    this.dispatchEvent(new Event('visibilitychange'));
  }
}

/** A page whose browser grants every lock, until told to refuse. */
export function fakeWakePage() {
  const document = new FakeDocument();
  const locks: FakeLock[] = [];
  const request = vi.fn(async () => {
    const lock = new FakeLock();
    locks.push(lock);
    return lock;
  });
  const page = { navigator: { wakeLock: { request } }, document: document as unknown as Document };
  const lastLock = () => {
    const lock = locks.at(-1);
    if (!lock) throw new Error('no lock was granted');
    return lock;
  };
  return { page, document, request, locks, lastLock };
}
