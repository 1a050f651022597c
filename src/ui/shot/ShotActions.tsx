import type { Models } from '../app-models';
import { WhyButton } from './WhyButton';
import './ShotActions.css';

/** Undo, set aside to compare, and how good the answer is. */
export function ShotActions({ app }: { app: Models<'shot' | 'room' | 'desk' | 'router'> }) {
  const { shot } = app;
  const isHolding = shot.comparison.value !== null;
  return (
    <div class="shot-actions">
      <button
        type="button"
        class="button"
        aria-label="Undo"
        disabled={!shot.canUndo.value}
        onClick={() => shot.undo()}
      >
        <span aria-hidden="true">↶</span> <span class="undo-word">Undo</span>
      </button>
      <button
        type="button"
        class="button"
        onClick={() => (isHolding ? shot.release() : shot.hold())}
      >
        {isHolding ? 'Let go' : 'Hold'}
      </button>
      <WhyButton app={app} />
    </div>
  );
}
