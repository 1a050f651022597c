import { computed, type ReadonlySignal } from '@preact/signals';
import { isSame } from '../store/same-value';

/**
 * The same values, but one that says no more than the last is the last itself: whoever works
 * something out from it need not begin anew.
 *
 * @param source of plain data
 */
export function steady<T>(source: ReadonlySignal<T>): ReadonlySignal<T> {
  let last: T | undefined;
  return computed(() => {
    const { value } = source;
    if (last === undefined || !isSame(value, last)) last = value;
    return last;
  });
}
