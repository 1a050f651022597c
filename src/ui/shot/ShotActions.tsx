import { useComputed } from '@preact/signals';
import type { Models } from '../app-models';
import './ShotActions.css';

/** Undo and redo, set aside to compare, log, and why the answer is as it is. */
export function ShotActions({ app }: { app: Models<'shot' | 'router'> }) {
  const { shot, router } = app;
  const isHolding = useComputed(() => shot.comparison.value !== null).value;
  const isAnswered = useComputed(() => shot.result.value.ok).value;
  const isWhyOpen = router.route.value.panel === 'why';
  return (
    <div class="shot-actions">
      <ArrowButton name="Undo" arrow="↶" isOff={!shot.canUndo.value} onPress={shot.undo} />
      <ArrowButton name="Redo" arrow="↷" isOff={!shot.canRedo.value} onPress={shot.redo} />
      <button
        type="button"
        class="button"
        onClick={() => (isHolding ? shot.release() : shot.hold())}
      >
        {isHolding ? 'Let go' : 'Hold'}
      </button>
      <button
        type="button"
        class="button log-button"
        aria-label="Log how it went"
        data-opens="after"
        disabled={!isAnswered}
        onClick={() => router.open('after')}
      >
        Log
      </button>
      <button
        type="button"
        class="button why-button"
        data-opens="why"
        aria-expanded={isWhyOpen}
        onClick={() => (isWhyOpen ? router.close() : router.open('why'))}
      >
        Why
      </button>
    </div>
  );
}

interface ArrowProps {
  readonly name: string;
  readonly arrow: string;
  readonly isOff: boolean;
  onPress(): void;
}

/** A step back or forth, as an arrow. */
export function ArrowButton({ name, arrow, isOff, onPress }: ArrowProps) {
  return (
    <button type="button" class="button" aria-label={name} disabled={isOff} onClick={onPress}>
      <span aria-hidden="true">{arrow}</span>
    </button>
  );
}
