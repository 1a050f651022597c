import type { NotedText } from '../../src/store/noted-text';

/** A noted text that is kept in memory, empty at first. */
export function textInMemory(): NotedText {
  let text: string | null = null;
  return {
    get: () => text,
    set(next) {
      text = next;
      return true;
    },
  };
}
