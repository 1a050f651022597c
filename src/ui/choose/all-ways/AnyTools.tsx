import type { ChooseModel } from '../../../state/choose/choose-model';

/** Leaves it open which ball falls, and into which pocket. */
export function AnyTools({ choose }: { choose: ChooseModel }) {
  const { balls, goal } = choose.open.value;
  if (balls.length < 2) return null;
  return (
    <div class="any-tools">
      <button
        type="button"
        class="button"
        aria-pressed={goal.ball === null}
        onClick={() => choose.playBall(null)}
      >
        Any ball
      </button>
      <button
        type="button"
        class="button"
        aria-pressed={goal.pocket === null}
        onClick={() => choose.playInto(null)}
      >
        Any pocket
      </button>
    </div>
  );
}
