import { afterFrame } from './sensors/idle';
import { notedText } from './store/noted-text';
import { rememberTap } from './ui/early-tap';
import { SCREEN_KEY, showNotedScreen } from './ui/noted-screen';

/**
 * Shows the last screen before the app's own scripts are even read, and starts the app once that can be
 * seen. It is the first to run, and looks at nothing but the note.
 */
let answerTap = () => {};

async function start(): Promise<void> {
  const note = notedText(() => globalThis.localStorage ?? null, SCREEN_KEY);
  const holder = document.getElementById('app');
  if (holder && showNotedScreen(note, holder)) {
    answerTap = rememberTap(holder);
    // Of a page that nobody looks at there is no frame to wait for.
    if (document.visibilityState === 'visible') {
      await afterFrame(window);
      // Whatever else waits for that frame comes before an app that is only now read.
      await new Promise((resolve) => setTimeout(resolve));
    }
  }
  // The sources are served with none: there the page starts the app itself.
  const app = document.querySelector<HTMLLinkElement>('#app-script');
  if (app) await import(/* @vite-ignore */ app.href);
}

/** The app has taken over: what was tapped meanwhile is answered. */
export function takenOver(): void {
  delete document.getElementById('app')?.dataset.noted;
  answerTap();
}

if (document.readyState !== 'loading') void start();
else document.addEventListener('DOMContentLoaded', () => void start());
