import { useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import type { KitFigure } from '../../state/kit-figure';
import type { ShelfName } from '../../store/records';
import { formatNumber, formatQuantity } from '../../units/format-number';
import type { LaterModels } from '../app-models';
import { HoldButton } from '../controls/HoldButton';
import { useProblem } from '../use-problem';

interface Props {
  readonly app: LaterModels<'kit'>;
  readonly shelf: ShelfName;
  readonly id: string;
  readonly figure: KitFigure;
  /** As the app plays with it: something else where readings overrule it. */
  readonly told?: string | undefined;
}

/** One number of a record: what it does, its sane range, and the ways to change it. */
export function RecordNumber({ app: { kit }, shelf, id, figure, told }: Props) {
  const draft = useSignal<string | null>(null);
  const [problem, tell] = useProblem();
  const inputId = useId();
  const hintId = useId();
  const putBack = useRef(() => {});
  // Changes here are kept one by one: a press that is taken away has to be put back.
  const gesture = {
    beginGesture() {
      putBack.current = kit.remember(shelf, id, path);
    },
    endGesture(isTakenAway = false) {
      if (isTakenAway) putBack.current();
    },
  };
  const { path, label, hint, range, facts } = figure;
  const shown = formatNumber(figure.figure, facts);

  function step(towards: 1 | -1, coarse: boolean): void {
    draft.value = null;
    tell(kit.nudge(shelf, id, path, towards, coarse));
  }

  return (
    <li class="record-number">
      <label for={inputId}>
        {label}
        {facts.symbol && `, ${facts.symbol}`}
      </label>
      <div class="record-number-row">
        <HoldButton model={gesture} label={`${label}: less`} step={(coarse) => step(-1, coarse)}>
          −
        </HoldButton>
        <span class="number-field">
          <input
            id={inputId}
            type="text"
            inputMode={range.min < 0 ? 'text' : 'decimal'}
            autocomplete="off"
            value={draft.value ?? shown}
            aria-invalid={problem.value !== ''}
            aria-describedby={hintId}
            onFocus={(event) => event.currentTarget.select()}
            onInput={(event) => {
              draft.value = event.currentTarget.value;
              tell(kit.enter(shelf, id, path, event.currentTarget.value));
            }}
            onBlur={() => {
              if (problem.value === '') draft.value = null;
            }}
          />
        </span>
        <HoldButton model={gesture} label={`${label}: more`} step={(coarse) => step(1, coarse)}>
          +
        </HoldButton>
      </div>
      <p id={hintId} class="record-hint">
        {problem.value !== '' && (
          <span class="field-problem">
            <span aria-hidden="true">⚠</span> {problem.value}{' '}
          </span>
        )}
        {told && told !== formatQuantity(figure.figure, facts) && (
          <b>Readings overrule it: {told}. </b>
        )}
        {hint} {formatNumber(range.min, facts)} to {formatQuantity(range.max, facts)}.
      </p>
    </li>
  );
}
