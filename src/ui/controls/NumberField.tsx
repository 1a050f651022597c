import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { FieldName } from '../../state/shot-fields';
import type { ShotModel } from '../../state/shot-model';
import { figureWithSide } from '../../units/side-words';
import './NumberField.css';

interface Props {
  readonly model: ShotModel;
  readonly name: FieldName;
  readonly label: string;
  /** Where a side may be typed the decimal keypad will not do. */
  readonly signed?: boolean;
}

/** A number to type. What cannot be used is told in one line beside it. */
export function NumberField({ model, name, label, signed = false }: Props) {
  const draft = useSignal<string | null>(null);
  const problemId = useId();
  const { figure, facts } = model.fields[name].value;
  const problem = model.problems[name].value;
  useEffect(
    () => () => {
      model.forgetProblem(name);
      model.endGesture();
    },
    [model, name],
  );
  const text = draft.value ?? problem?.text ?? figureWithSide(figure, facts);
  return (
    <span class="number-field">
      <input
        type="text"
        inputMode={signed ? 'text' : 'decimal'}
        autocomplete="off"
        enterkeyhint="done"
        aria-label={label}
        aria-invalid={problem !== null}
        aria-describedby={problem ? problemId : undefined}
        value={text}
        onFocus={(event) => {
          model.beginGesture();
          event.currentTarget.select();
        }}
        onInput={(event) => {
          draft.value = event.currentTarget.value;
          model.typeIn(name, event.currentTarget.value);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
        }}
        onBlur={() => {
          draft.value = null;
          model.endGesture();
        }}
      />
      {problem && (
        <span class="field-problem" id={problemId}>
          <span aria-hidden="true">⚠</span> {problem.message}
        </span>
      )}
    </span>
  );
}
