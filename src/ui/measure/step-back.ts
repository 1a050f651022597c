import type { EditResult } from '../../state/edit-result';
import type { AttemptProgress } from '../../state/measure/attempt-progress';
import type { Attempt } from '../../store/attempt';
import type { LaterModels } from '../app-models';
import { ENTRY_SPECS, type EntryName, entryDraft, openingUnit } from './entry-specs';
import { draftText, type KeypadDraft } from './keypad-draft';
import type { MeasureSession } from './measure-session';

/** Takes the last step back, and puts what it read on the keypad again. */
export function stepBack(
  app: LaterModels<'kit' | 'measure' | 'desk'>,
  session: MeasureSession,
  { attempt }: AttemptProgress,
): EditResult {
  const last = attempt.stepsDone.at(-1) ?? '';
  const undone = app.measure.stepBack(attempt.id);
  const draft = undone.ok ? draftOf(app, session, attempt, last) : null;
  if (draft) app.measure.type(attempt.id, draftText(draft));
  return undone;
}

function draftOf(
  app: LaterModels<'kit' | 'desk'>,
  session: MeasureSession,
  attempt: Attempt,
  step: string,
): KeypadDraft | null {
  const name = entryNameOf(step);
  const value = name && enteredValue(attempt, name);
  if (name === null || typeof value !== 'number') return null;
  const unit = openingUnit(name, session.unit.peek(), app.desk.preferences.peek());
  const draft = entryDraft(name, value, unit, entryTable(app, attempt));
  return name === 'timeS' ? { ...draft, word: 'tapped' } : draft;
}

/** What a figure of this attempt hangs on. */
export function entryTable(app: LaterModels<'kit'>, { shot }: Attempt) {
  const { ballRadiusM } = app.kit.kit.value;
  const { bedLengthM, distanceM } = shot.setup;
  return { bedLengthM, ballRadiusM, firstLegM: distanceM };
}

/** The entry of that name; null where the step asks for none. */
export function entryNameOf(step: string): EntryName | null {
  return (Object.keys(ENTRY_SPECS) as EntryName[]).find((name) => name === step) ?? null;
}

function enteredValue({ readings, butt, shot }: Attempt, name: EntryName): number | undefined {
  if (name === 'butt') return butt?.buttHeightM;
  if (name === 'distance') return shot.setup.distanceM;
  return readings[name];
}
