import { useSignal } from '@preact/signals';
import type { AttemptProgress } from '../../state/measure/attempt-progress';
import { buttQuery } from './butt-words';
import { ENTRY_SPECS, type EntrySpec, entryInSi, openingUnit } from './entry-specs';
import {
  draftText,
  type EntryUnit,
  type EntryWord,
  type KeypadDraft,
  keyed,
  parseDraft,
  signedFigure,
} from './keypad-draft';
import { entryNameOf, entryTable } from './step-back';
import type { StepProps } from './step-props';

/** A figure being entered; whatever stands there is kept at every key. */
export interface Entry {
  readonly spec: EntrySpec;
  readonly draft: KeypadDraft;
  press(key: string): void;
  choose(word: EntryWord): void;
  setUnit(unit: EntryUnit): void;
  /** Puts a tapped time there. */
  setTapped(seconds: number): void;
  clear(): void;
  /** Takes what stands there, says what is wrong with it, or asks about it. */
  submit(): void;
  /** Takes what is asked about; null where nothing is. Two quick taps on Enter are no answer. */
  readonly confirm: (() => void) | null;
}

/** The figure that the present step asks for. */
export function useEntry({ app, session, attempt, step, problem }: StepProps): Entry {
  const { measure } = app;
  const name = entryNameOf(step.name) ?? 'timeS';
  const spec = ENTRY_SPECS[name];
  const unit = openingUnit(name, session.unit.value, app.desk.preferences.value);
  const asked = useSignal<{ readonly query: string; readonly inSi: number } | null>(null);
  const doubted = asked.value;
  // Asked for anew at every key: two may come before the screen is drawn again.
  const draftNow = () => parseDraft(keptText(measure.progress(attempt.id), step.name), unit);
  const keep = (next: KeypadDraft) => {
    problem.value = '';
    measure.type(attempt.id, draftText(next));
  };
  const take = (inSi: number) => {
    const entered = measure.enter(attempt.id, inSi);
    problem.value = entered.ok ? '' : entered.problem;
  };
  const ask = (query: string, inSi: number) => {
    problem.value = query;
    asked.value = { query, inSi };
  };

  return {
    spec,
    draft: draftNow(),
    press: (key) => keep(keyed(draftNow(), key)),
    choose: (word) => keep({ ...draftNow(), word }),
    setUnit(next) {
      session.unit.value = next;
      const { isWhole, ...draft } = draftNow();
      // What was put there whole was so in its own unit.
      keep({ ...draft, figure: isWhole ? '' : draft.figure, unit: next });
    },
    setTapped: (seconds) => keep({ figure: seconds.toFixed(2), unit: 's', word: 'tapped' }),
    clear: () => keep({ figure: '', unit, word: '' }),
    submit() {
      const draft = draftNow();
      const value = signedFigure(draft);
      if (!value.ok) {
        problem.value = value.message;
      } else if (spec.ways && draft.word === '' && value.value !== 0) {
        problem.value = `Say which way: ${spec.ways[0]} or ${spec.ways[1]}.`;
      } else {
        const inSi = entryInSi(name, value.value, draft.unit, entryTable(app, attempt));
        const query = name === 'butt' ? buttQuery(app, attempt, inSi, draft) : null;
        if (query === null) take(inSi);
        else ask(query, inSi);
      }
    },
    confirm: doubted && problem.value === doubted.query ? () => take(doubted.inSi) : null,
  };
}

/** What was kept of a step that is still to be done. */
function keptText(progress: AttemptProgress | null, step: string): string | null {
  const typed = progress?.attempt.typed ?? null;
  return typed?.step === step ? typed.text : null;
}
