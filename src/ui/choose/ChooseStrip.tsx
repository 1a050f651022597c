import type { Models } from '../app-models';
import { HelpLinks } from '../HelpLinks';

/** Which position is open, the way to the others, undoing, and the ways to words and settings. */
export function ChooseStrip({ app }: { app: Models<'choose' | 'router'> }) {
  const { choose, router } = app;
  const { name, origin } = choose.open.value;
  return (
    <div class="choose-strip">
      <button
        type="button"
        class="button choose-name"
        data-opens="positions"
        onClick={() => router.open('positions')}
      >
        <span class="visually-hidden">Positions, open now: </span>
        <span class="choose-title">
          <b>{name}</b>{' '}
          {origin === 'invented' && <span class="choose-origin">an invented example</span>}
        </span>
        <span aria-hidden="true">▾</span>
      </button>
      <button
        type="button"
        class="button"
        aria-label="Undo"
        disabled={!choose.canUndo.value}
        onClick={() => choose.undo()}
      >
        <span aria-hidden="true">↶</span>
      </button>
      <button
        type="button"
        class="button"
        aria-label="Redo"
        disabled={!choose.canRedo.value}
        onClick={() => choose.redo()}
      >
        <span aria-hidden="true">↷</span>
      </button>
      <HelpLinks app={app} />
    </div>
  );
}
