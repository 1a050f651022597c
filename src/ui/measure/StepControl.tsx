import { useSignal } from '@preact/signals';
import { CueLength } from './CueLength';
import { Keypad } from './Keypad';
import { parseDraft } from './keypad-draft';
import type { StepProps } from './step-props';
import { TapPad } from './TapPad';
import { useEntry } from './use-entry';

/** What the thumb does at this step: a big button, a keypad, or a pad to tap. */
export function StepControl(props: StepProps & { readonly done: string }) {
  const { app, attempt, step, problem, done } = props;
  if (step.kind !== 'done') return <EntryControl {...props} />;
  return (
    <button
      type="button"
      class="button button-main"
      onClick={() => {
        const finished = app.measure.finishStep(attempt.id);
        problem.value = finished.ok ? '' : finished.problem;
      }}
    >
      <span aria-hidden="true">✓</span> {done}
    </button>
  );
}

function EntryControl(props: StepProps) {
  const { attempt, step } = props;
  const entry = useEntry(props);
  const kept = attempt.typed?.step === step.name ? attempt.typed.text : null;
  const typedAlready = parseDraft(kept, 's');
  const isTyped = useSignal(
    step.kind !== 'taps' || (typedAlready.figure !== '' && typedAlready.word !== 'tapped'),
  );
  if (!isTyped.value) {
    return (
      <TapPad
        entry={entry}
        trial={attempt.shot.trial}
        onType={() => {
          entry.clear();
          isTyped.value = true;
        }}
      />
    );
  }
  return (
    <>
      {entry.confirm && (
        <button type="button" class="button" onClick={entry.confirm}>
          Yes, it is
        </button>
      )}
      {step.kind === 'butt' && <CueLength {...props} />}
      <Keypad
        entry={entry}
        onTap={
          step.kind === 'taps'
            ? () => {
                entry.clear();
                isTyped.value = false;
              }
            : null
        }
      />
    </>
  );
}
