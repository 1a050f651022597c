import type { Later } from '../../../../src/state/choose/work-at-rest';

/** Work for later that waits until it is told that all is at rest; only the last that was asked for. */
export function holdLater(): { later: Later; rest(): void } {
  let due: (() => void) | null = null;
  return {
    later(work) {
      due = work;
      return () => {
        if (due === work) due = null;
      };
    },
    rest() {
      const work = due;
      due = null;
      work?.();
    },
  };
}
