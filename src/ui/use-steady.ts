import { computed, type ReadonlySignal } from '@preact/signals';
import { useState } from 'preact/hooks';
import { steady } from '../state/steady';

/**
 * What is read off signals, which changes only with what it says: whoever shows it is drawn anew for
 * nothing less.
 *
 * @param read of plain data, off nothing but signals
 */
export function useSteady<T>(read: () => T): ReadonlySignal<T> {
  return useState(() => steady(computed(read)))[0];
}
