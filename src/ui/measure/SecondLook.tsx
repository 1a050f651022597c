import type { Attempt } from '../../store/attempt';
import type { LaterModels } from '../app-models';

/** What can be done at once about an attempt that looks wrong. */
export function SecondLook({
  app: { measure, router },
  attempt,
}: {
  app: LaterModels<'measure' | 'router'>;
  attempt: Attempt;
}) {
  const { id, shot, isStruckOut } = attempt;
  return (
    <div class="record-actions">
      <button
        type="button"
        class="button"
        disabled={measure.crowded.value !== null}
        onClick={() => router.open(`measure/${measure.begin(shot)}`)}
      >
        Play it again
      </button>
      <button type="button" class="button" onClick={() => measure.strikeOut(id, !isStruckOut)}>
        {isStruckOut ? 'Take back in' : 'Strike out'}
      </button>
    </div>
  );
}
