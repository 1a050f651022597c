import { effect, untracked } from '@preact/signals';

/** Something that is worked out by itself once what it hangs on has come to rest. */
export interface RestingWork {
  /** Whether it is to be worked out; read so that what it hangs on is followed. */
  isDue(): boolean;
  begin(): void;
}

/** Does work once nothing has been asked for a moment and no finger is down; gives what calls it off. */
export type Later = (work: () => void) => () => void;

/**
 * Begins whatever is due, each time that what it hangs on has changed and come to rest. The function
 * it gives ends that.
 */
export function workAtRest(works: readonly RestingWork[], later: Later): () => void {
  let callOff = () => {};
  const stop = effect(() => {
    callOff();
    const due = works.filter((work) => work.isDue());
    if (due.length === 0) return;
    const beginAll = () => {
      for (const work of due) work.begin();
    };
    callOff = untracked(() => later(beginAll));
  });
  return () => {
    stop();
    callOff();
  };
}
