/** Lets through one change a frame. */
export interface FrameGate {
  /** Does it at once, or with the next frame where one was done for this frame: then the last of them. */
  take(work: () => void): void;
  /** Does now what still waits. */
  flush(): void;
}

/**
 * A frame is asked for only where something waits for it: most browsers tell of a finger once a frame,
 * and one more frame a move would cost as much as what it draws.
 *
 * @param nextFrame calls back as the next frame begins
 * @param frameTime the same all through a frame, and never again
 */
export function createFrameGate(
  nextFrame: (work: () => void) => void,
  frameTime: () => unknown,
): FrameGate {
  let taken: unknown;
  let waiting: (() => void) | null = null;

  function flush(): void {
    const work = waiting;
    waiting = null;
    work?.();
  }
  function wait(work: () => void): void {
    waiting = work;
    nextFrame(() => {
      taken = frameTime();
      flush();
    });
  }
  return {
    take(work) {
      const now = frameTime();
      if (waiting) waiting = work;
      else if (now === taken) wait(work);
      else {
        taken = now;
        work();
      }
    },
    flush,
  };
}
