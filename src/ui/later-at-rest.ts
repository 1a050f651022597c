/** How long a change waits for the next, ms. */
const REST_MS = 120;

/**
 * Does work once nothing has been asked for a moment and no finger is down; only the last work
 * asked for. The function it gives calls that off.
 *
 * @param restMs that moment; 0: as soon as no finger is down
 */
export function createLaterAtRest(
  page: EventTarget,
  restMs = REST_MS,
): (work: () => void) => () => void {
  let due: (() => void) | null = null;
  let isHeld = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function wait(): void {
    clearTimeout(timer);
    if (due && !isHeld) timer = setTimeout(doIt, restMs);
  }
  function doIt(): void {
    const work = due;
    due = null;
    work?.();
  }
  function hold(held: boolean): void {
    isHeld = held;
    wait();
  }

  page.addEventListener('pointerdown', () => hold(true));
  for (const end of ['pointerup', 'pointercancel', 'blur']) {
    page.addEventListener(end, () => hold(false));
  }
  return (work) => {
    due = work;
    wait();
    return () => {
      if (due === work) due = null;
    };
  };
}
