import { effect, type ReadonlySignal } from '@preact/signals';
import type { Preferences } from '../store/records';

/**
 * Keeps the page in the theme that is chosen, and for the hand. Begun before anything is drawn:
 * what is drawn would be laid out and painted in the other theme first. The system's bar follows once
 * the styles have been worked out anyway.
 */
export function wearPreferences(
  preferences: ReadonlySignal<Pick<Preferences, 'theme' | 'hand'>>,
): void {
  effect(() => {
    const { theme, hand } = preferences.value;
    document.documentElement.dataset.theme = theme;
    document.documentElement.dataset.hand = hand;
    requestAnimationFrame(colourBar);
  });
}

function colourBar(): void {
  const slate = getComputedStyle(document.documentElement).getPropertyValue('--slate').trim();
  for (const bar of document.querySelectorAll('meta[name="theme-color"]')) {
    bar.setAttribute('content', slate);
  }
}
