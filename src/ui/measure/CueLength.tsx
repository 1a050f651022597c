import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { formatNumber } from '../../units/format-number';
import { LENGTH_UNITS, lengthInM, lengthInUnit } from '../../units/length-unit';
import { parseNumber } from '../../units/parse-number';
import type { StepProps } from './step-props';

/** How long the cue is, from which and from the butt's height the elevation follows. */
export function CueLength({ app, attempt, problem }: StepProps) {
  const draft = useSignal<string | null>(null);
  const inputId = useId();
  const unit = app.desk.preferences.value.lengthUnit === 'in' ? 'in' : 'cm';
  const facts = { ...LENGTH_UNITS[unit], leastDecimals: 0 };
  const lengthM = app.measure.cueLengthM(attempt.id);
  const take = (text: string) => {
    const typed = parseNumber(text, facts.symbol);
    const said = typed.ok
      ? app.measure.setCueLength(attempt.id, lengthInM(typed.value, unit))
      : { ok: false, problem: typed.message };
    problem.value = said.ok ? '' : said.problem;
    if (said.ok) draft.value = null;
  };
  return (
    <div class="cue-length">
      <label for={inputId}>Cue’s length, {facts.symbol}</label>
      <span class="number-field">
        <input
          id={inputId}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          enterkeyhint="done"
          value={draft.value ?? formatNumber(lengthInUnit(lengthM, unit), facts)}
          onInput={(event) => {
            draft.value = event.currentTarget.value;
          }}
          onChange={(event) => take(event.currentTarget.value)}
        />
      </span>
    </div>
  );
}
