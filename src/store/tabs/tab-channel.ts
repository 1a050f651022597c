import type { StoreName } from '../contents';
import { isPlainObject } from '../mend';
import { STORE_NAMES } from '../stores';

/** How the tabs of one app tell each other which row they have written. */
export interface TabChannel {
  post(message: unknown): void;
  onMessage(hear: (message: unknown) => void): void;
}

/** What tabs tell each other: where one has written. */
export function isWritten(message: unknown): message is { store: StoreName; id: string } {
  if (!isPlainObject(message) || typeof message.id !== 'string') return false;
  return STORE_NAMES.some((name) => name === message.store);
}
