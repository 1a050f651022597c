import type { AppModels } from '../app-models';
import { shotName } from './trial-words';

/** The way back into an attempt that was left. */
export function UnfinishedRow({ app: { measure, router, desk } }: { app: AppModels }) {
  const unfinished = measure.unfinished.value;
  if (!unfinished?.now) return null;
  const { attempt, steps, now } = unfinished;
  const name = shotName(attempt.shot, desk.preferences.value.lengthUnit);
  return (
    <button
      type="button"
      class="button button-main unfinished"
      data-opens={`measure/${attempt.id}`}
      onClick={() => router.open(`measure/${attempt.id}`)}
    >
      Go on: {name}, step {steps.indexOf(now) + 1} of {steps.length}
    </button>
  );
}
