import type { AppModels } from '../app-models';
import './ShotActions.css';

/** Undo, set aside to compare, and why the answer is what it is. */
export function ShotActions({ app }: { app: AppModels }) {
  const { shot, router } = app;
  const isHolding = shot.comparison.value !== null;
  const isWhyOpen = router.route.value.panel === 'why';
  return (
    <div class="shot-actions">
      <button
        type="button"
        class="button"
        disabled={!shot.canUndo.value}
        onClick={() => shot.undo()}
      >
        <span aria-hidden="true">↶</span> Undo
      </button>
      <button
        type="button"
        class="button"
        onClick={() => (isHolding ? shot.release() : shot.hold())}
      >
        {isHolding ? 'Let go' : 'Hold'}
      </button>
      <button
        type="button"
        class="button"
        data-opens="why"
        aria-expanded={isWhyOpen}
        onClick={() => (isWhyOpen ? router.close() : router.open('why'))}
      >
        Why
      </button>
    </div>
  );
}
