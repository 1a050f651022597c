import type { Models } from '../app-models';
import { type ChooseMode, TABLE_MODES } from './choose-mode';
import './ModeTabs.css';

/** What the table is used for now. The back button leads to the balls. */
export function ModeTabs({ app: { router }, mode }: { app: Models<'router'>; mode: ChooseMode }) {
  return (
    <fieldset class="mode-tabs">
      <legend class="visually-hidden">What to do on the table</legend>
      {TABLE_MODES.map(([name, label]) => (
        <button
          key={name}
          type="button"
          class="mode-tab"
          data-opens={name}
          aria-pressed={name === mode}
          onClick={() => {
            if (name === 'balls') router.close();
            else router.open(name);
          }}
        >
          {label}
        </button>
      ))}
    </fieldset>
  );
}
