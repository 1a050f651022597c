import { type ReadonlySignal, useSignal, useSignalEffect } from '@preact/signals';

const STILL_MS = 600;

/** A value that follows another once that has stood still for a moment. */
export function useSettled<T>(source: ReadonlySignal<T>): ReadonlySignal<T> {
  const settled = useSignal(source.peek());
  useSignalEffect(() => {
    const value = source.value;
    const timer = setTimeout(() => {
      settled.value = value;
    }, STILL_MS);
    return () => clearTimeout(timer);
  });
  return settled;
}
