/**
 * Remembers the last button tapped on a screen that nothing answers yet.
 *
 * @returns taps it, where it still stands and says the same, and ends the remembering
 */
export function rememberTap(holder: HTMLElement): () => void {
  let tapped: { readonly button: HTMLElement; readonly says: string } | null = null;
  const remember = (event: Event) => {
    const { target } = event;
    const button =
      target instanceof Element ? target.closest<HTMLElement>('button, summary') : null;
    if (!button) return;
    // A fold would open of itself, and be closed again by who takes the screen over.
    event.preventDefault();
    tapped = { button, says: wordsOf(button) };
  };
  holder.addEventListener('click', remember);
  return () => {
    holder.removeEventListener('click', remember);
    if (tapped && holder.contains(tapped.button) && wordsOf(tapped.button) === tapped.says) {
      tapped.button.click();
    }
  };
}

const wordsOf = (button: HTMLElement) =>
  `${button.getAttribute('aria-label')} ${button.textContent}`;
