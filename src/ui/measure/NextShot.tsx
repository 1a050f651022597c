import { traitsOf } from '../../state/measure/trial-traits';
import type { LaterModels } from '../app-models';
import { toGoWords } from './gain-words';
import { firstForWords, lessonOf } from './lesson-of';
import { RaisedWarning } from './RaisedWarning';
import { TrialDrawing } from './TrialDrawing';
import { quantityName, shotName } from './trial-words';
import { FACES } from './trials/faces';

/** The one shot to do next: drawn, told in a line, and begun by one button. */
export function NextShot({ app }: { app: LaterModels<'kit' | 'measure' | 'desk' | 'router'> }) {
  const { measure, router, desk } = app;
  const [best] = measure.offers.value;
  if (!best) return null;
  const { shot, trial } = best;
  const toGo = measure.toGo.value;
  const lesson = lessonOf(measure.report.value, shot);
  const teaches = lesson ? quantityName(lesson.teaches) : FACES[trial].teaches;
  return (
    <section class="next-shot" aria-labelledby="next-shot">
      <div class="next-shot-words">
        <h2 id="next-shot">Next</h2>
        <p class="next-shot-teaches">
          <b>{shotName(shot, desk.preferences.value.lengthUnit)}</b>: teaches {teaches} most. About{' '}
          {FACES[trial].takes}.
        </p>
        <p class="place-note next-shot-to-go">
          {toGo !== undefined && toGoWords(toGo, firstForWords(measure.report.value))}
        </p>
        {traitsOf(trial).isRaised && <RaisedWarning />}
        <button
          type="button"
          class="button button-main"
          disabled={measure.crowded.value !== null}
          onClick={() => router.open(`measure/${measure.begin(shot)}`)}
        >
          Play it
        </button>
      </div>
      <TrialDrawing app={app} shot={shot} step="place" />
    </section>
  );
}
