import { type ReadonlySignal, signal } from '@preact/signals';
import { createWakeLock, type WakeLockPage } from '../../sensors/wake-lock';

/** Keeps the screen lit while something is measured. */
export interface AwakeModel {
  /** The screen may go dark although it should not. */
  readonly mayGoDark: ReadonlySignal<boolean>;
  hold(): void;
  release(): void;
}

export function createAwakeModel(page: WakeLockPage): AwakeModel {
  const mayGoDark = signal(false);
  const lock = createWakeLock(page, () => {
    mayGoDark.value = lock.state === 'wanted' || lock.state === 'unavailable';
  });
  return { mayGoDark, hold: lock.hold, release: lock.release };
}
