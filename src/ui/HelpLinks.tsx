import type { Models } from './app-models';
import './HelpLinks.css';

/** The words explained and the settings, one tap away; back leads to where one was. */
export function HelpLinks({ app: { router } }: { app: Models<'router'> }) {
  return (
    <div class="help-links">
      <button
        type="button"
        class="help-link"
        aria-label="Words explained"
        data-opens="words"
        onClick={() => router.visit('kit', 'words')}
      >
        ?
      </button>
      <button
        type="button"
        class="help-link"
        aria-label="Settings"
        data-opens="preferences"
        onClick={() => router.visit('kit', 'preferences')}
      >
        <Sliders />
      </button>
    </div>
  );
}

/** Three tracks with a thumb on each. */
function Sliders() {
  return (
    <svg aria-hidden="true" width="22" height="22" viewBox="0 0 22 22">
      <path d="M2 5h18M2 11h18M2 17h18" />
      <circle cx="14" cy="5" r="2.6" />
      <circle cx="7" cy="11" r="2.6" />
      <circle cx="16" cy="17" r="2.6" />
    </svg>
  );
}
