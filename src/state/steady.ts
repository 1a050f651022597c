import { computed, type ReadonlySignal } from '@preact/signals';

/**
 * The same values, but one that says no more than the last is the last itself: whoever works
 * something out from it need not begin anew.
 *
 * @param source of plain data
 */
export function steady<T>(source: ReadonlySignal<T>): ReadonlySignal<T> {
  let last: { readonly value: T; readonly text: string } | null = null;
  return computed(() => {
    const { value } = source;
    const text = JSON.stringify(value);
    if (last?.text !== text) last = { value, text };
    return last.value;
  });
}
