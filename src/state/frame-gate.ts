/** Lets through one change a frame. */
export interface FrameGate {
  /** Does it at once, or with the next frame where one was done for this frame: then the last of them. */
  take(work: () => void): void;
  /** Does now what still waits. */
  flush(): void;
}

/** @param nextFrame calls back as the next frame begins */
export function createFrameGate(nextFrame: (work: () => void) => void): FrameGate {
  let isTaken = false;
  let waiting: (() => void) | null = null;

  function flush(): void {
    const work = waiting;
    waiting = null;
    work?.();
  }
  function run(work: () => void): void {
    isTaken = true;
    nextFrame(() => {
      isTaken = false;
      if (waiting) run(flush);
    });
    work();
  }
  return {
    take(work) {
      if (isTaken) waiting = work;
      else run(work);
    },
    flush,
  };
}
