import { computed, type ReadonlySignal } from '@preact/signals';

/**
 * A value that stands as it was while something is held, and costs nothing then.
 *
 * @param isHeld whether a finger is down
 */
export function atRest<T>(
  source: ReadonlySignal<T>,
  isHeld: ReadonlySignal<boolean>,
): ReadonlySignal<T> {
  let last: { readonly value: T } | null = null;
  return computed(() => {
    if (!isHeld.value || last === null) last = { value: source.value };
    return last.value;
  });
}
