/** Where a browser does not tell when it is idle, a moment after a frame is taken for it, ms. */
const MOMENT_MS = 60;
/** A page that is never idle has to find the time all the same, ms. */
const PATIENCE_MS = 2000;

/** What is needed of a page; `window` is one. */
export interface IdlePage {
  requestAnimationFrame(work: () => void): unknown;
  setTimeout(work: () => void, ms?: number): unknown;
  /** Safari has none. */
  requestIdleCallback?(work: () => void, options: { readonly timeout: number }): unknown;
}

/** Resolves once a frame is out. */
export function afterFrame(page: IdlePage): Promise<void> {
  return new Promise((resolve) => onceOut(page, resolve));
}

/** Resolves once a frame is out and the page has nothing to do. */
export function whenIdle(page: IdlePage): Promise<void> {
  return new Promise((resolve) => {
    // Before the first frame a page is idle too: what is asked for then would hold that frame up.
    onceOut(page, () => {
      if (page.requestIdleCallback) {
        page.requestIdleCallback(() => resolve(), { timeout: PATIENCE_MS });
      } else page.setTimeout(resolve, MOMENT_MS);
    });
  });
}

/** A page that nobody sees, opened in another tab, is given no frames, and is not waited for. */
function onceOut(page: IdlePage, work: () => void): void {
  let isOut = false;
  const once = () => {
    if (!isOut) work();
    isOut = true;
  };
  page.requestAnimationFrame(() => page.setTimeout(once));
  page.setTimeout(once, PATIENCE_MS);
}
