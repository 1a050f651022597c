import type { LaterModels } from '../app-models';
import { toGoWords } from './gain-words';
import { lessonOf } from './lesson-of';
import { OfferButton } from './OfferButton';
import { ToShot } from './ToShot';
import { TrialDrawing } from './TrialDrawing';
import { quantityName, shotName } from './trial-words';
import { FACES } from './trials/faces';

/** The one shot to do next: drawn, told in a line, and begun by one button. */
export function NextShot({ app }: { app: LaterModels<'kit' | 'measure' | 'desk' | 'router'> }) {
  const { measure, desk } = app;
  const [best] = measure.offers.value;
  if (!best) return null;
  const { shot, trial } = best;
  const lesson = lessonOf(measure.report.value, shot);
  const teaches = lesson ? quantityName(lesson.teaches) : FACES[trial].teaches;
  const toGo = measure.toGo.value;
  const isReached = toGo?.shots === 0 && measure.lastReadAtMs.value !== null;
  return (
    <section class="next-shot" aria-labelledby="next-shot">
      <div class="next-shot-words">
        <h2 id="next-shot">Next</h2>
        <p class="next-shot-teaches">
          <b>{shotName(shot, desk.preferences.value.lengthUnit)}</b>: teaches {teaches} most. About{' '}
          {FACES[trial].takes}.
        </p>
        <p class="place-note next-shot-to-go">{toGo && toGoWords({ ...toGo, first: null })}</p>
        <div class="next-shot-buttons">
          {isReached && <ToShot router={app.router} />}
          <OfferButton app={app} shot={shot} isMain={!isReached}>
            Play it
          </OfferButton>
        </div>
      </div>
      <TrialDrawing app={app} shot={shot} step="place" />
    </section>
  );
}
