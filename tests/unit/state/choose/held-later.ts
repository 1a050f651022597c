import type { Later } from '../../../../src/state/choose/work-at-rest';

/** Work for later that waits until it is told that all is at rest. */
export function holdLater(): { later: Later; rest(): void } {
  const due = new Set<() => void>();
  return {
    later(work) {
      due.add(work);
      return () => {
        due.delete(work);
      };
    },
    rest() {
      const works = [...due];
      due.clear();
      for (const work of works) work();
    },
  };
}
