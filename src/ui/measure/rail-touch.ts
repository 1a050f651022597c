import { entryDraft, entryInSi, openingUnit } from './entry-specs';
import { expectedOf } from './expected-reading';
import { draftText, parseDraft, signedFigure } from './keypad-draft';
import { entryTable } from './step-back';
import type { StepProps } from './step-props';
import type { RailTouch } from './TrialDrawing';

/** The drawn far rail as a way to say a landing, which then stands on the keypad; null at other steps. */
export function railTouch(props: Omit<StepProps, 'problem'>): RailTouch | null {
  const { app, session, attempt, step } = props;
  const { name } = step;
  if (name !== 'landingM' && name !== 'objectLandingM') return null;
  const table = entryTable(app, attempt);
  const opening = openingUnit(name, session.unit.value, app.desk.preferences.value);
  const { typed } = attempt;
  const draft = parseDraft(typed?.step === name ? typed.text : null, opening);
  const signed = draft.word === '' ? null : signedFigure(draft);
  return {
    landingM: signed?.ok ? entryInSi(name, signed.value, draft.unit, table) : null,
    expectedM: expectedOf(app.measure.report.value, attempt.shot, step),
    onLanding(landingM) {
      app.measure.type(attempt.id, draftText(entryDraft(name, landingM, draft.unit, table)));
    },
  };
}
