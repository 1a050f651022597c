/** What a held button does. */
export interface HeldAction {
  /** Called when pressed. */
  begin(): void;
  /** One step; `coarse` once it has been held for a while. */
  step(coarse: boolean): void;
  /** @param cancelled the press was taken away, or slid off, before anything was repeated. */
  end(cancelled: boolean): void;
}

/** The handlers of a held button, and how to stop it from outside. */
export interface HoldRepeat {
  press(event: PointerEvent): void;
  release(): void;
  cancel(): void;
  /** Moved off the button, still pressed: what follows is not meant for it. */
  slideOff(): void;
  click(): void;
}

const FIRST_REPEAT_MS = 400;
const SLOWEST_REPEAT_MS = 120;
const FASTEST_REPEAT_MS = 33;
/** Each repeat comes sooner than the last by this factor. */
const QUICKENING = 0.92;
/** Repeats before steps turn long. */
const FINE_REPEATS = 14;

/**
 * Steps when pressed and again while held, sooner and sooner; at most once a frame. A key or an
 * assistive click, which no press precedes, steps once.
 */
export function createHoldRepeat(action: () => HeldAction): HoldRepeat {
  let frame = 0;
  let repeats: number | null = null;
  /** The press has acted, so the click that follows it must not. */
  let acted = false;
  let hasSlidOff = false;

  function stop(cancelled: boolean): void {
    if (repeats === null) return;
    cancelAnimationFrame(frame);
    const untouched = repeats === 0;
    repeats = null;
    action().end(cancelled && untouched);
  }

  function repeatFrom(start: number): void {
    let interval = SLOWEST_REPEAT_MS;
    let due = start + FIRST_REPEAT_MS;
    const tick = (now: number) => {
      frame = requestAnimationFrame(tick);
      if (repeats === null || now < due) return;
      repeats++;
      interval = Math.max(FASTEST_REPEAT_MS, interval * QUICKENING);
      due = now + interval;
      action().step(repeats > FINE_REPEATS);
    };
    frame = requestAnimationFrame(tick);
  }

  return {
    press(event) {
      if (event.button !== 0 || repeats !== null) return;
      repeats = 0;
      acted = true;
      action().begin();
      action().step(false);
      repeatFrom(performance.now());
    },
    release() {
      stop(false);
      if (!hasSlidOff) return;
      hasSlidOff = false;
      // A mouse still clicks what it pressed, at once; a finger does not.
      setTimeout(() => {
        acted = false;
      });
    },
    cancel() {
      stop(true);
      acted = false;
    },
    slideOff() {
      hasSlidOff ||= repeats !== null;
      stop(true);
    },
    click() {
      if (!acted) action().step(false);
      acted = false;
    },
  };
}
