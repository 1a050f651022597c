import type { LaterModels } from '../app-models';
import { forgivenWords, toGoWords } from './gain-words';
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
        <p class="place-note next-shot-to-go">{leftWords(app)}</p>
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

/** How much is left to do for the shot on Shot, or that it asks for none of it. */
function leftWords({ measure, kit }: LaterModels<'kit' | 'measure'>): string {
  const toGo = measure.toGo.value;
  if (toGo === null) return '';
  const now = measure.measured.value.length > 0 ? null : measure.aimGain(measure.knowledge.value);
  return toGo.shots === 0 && now
    ? forgivenWords(now.enoughM, kit.current.tables.value.lengthM)
    : toGoWords({ ...toGo, first: null });
}
