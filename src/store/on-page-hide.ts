/**
 * Calls back whenever the page may be about to go away: hidden, closed, or replaced. A phone
 * often closes a hidden page without another word, so hiding counts as leaving.
 * @returns how to stop listening.
 */
export function onPageHide(listener: () => void, page: Window = window): () => void {
  const whenHidden = () => {
    if (page.document.visibilityState === 'hidden') listener();
  };
  page.document.addEventListener('visibilitychange', whenHidden);
  page.addEventListener('pagehide', listener);
  return () => {
    page.document.removeEventListener('visibilitychange', whenHidden);
    page.removeEventListener('pagehide', listener);
  };
}

/** Calls back when the page is left, though it may come back as it was. */
export function onPageGone(listener: () => void, page: Window = window): void {
  page.addEventListener('pagehide', listener);
}
