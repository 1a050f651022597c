/** How long a change waits for the next, ms. */
const REST_MS = 120;

/**
 * Does work once nothing has been asked for a moment and no finger is down: all that was asked for
 * since, in that order. The function it gives calls one off.
 *
 * @param restMs that moment; 0: as soon as no finger is down
 */
export function createLaterAtRest(
  page: EventTarget,
  restMs = REST_MS,
): (work: () => void) => () => void {
  const due = new Set<() => void>();
  let isHeld = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function wait(): void {
    clearTimeout(timer);
    if (due.size > 0 && !isHeld) timer = setTimeout(doIt, restMs);
  }
  function doIt(): void {
    const works = [...due];
    due.clear();
    for (const work of works) work();
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
    due.add(work);
    wait();
    return () => {
      due.delete(work);
    };
  };
}
