import type { Models } from '../app-models';
import { HelpLinks } from '../HelpLinks';
import { ArrowButton } from '../shot/ShotActions';

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
      <ArrowButton name="Undo" arrow="↶" isOff={!choose.canUndo.value} onPress={choose.undo} />
      <ArrowButton name="Redo" arrow="↷" isOff={!choose.canRedo.value} onPress={choose.redo} />
      <HelpLinks app={app} />
    </div>
  );
}
