import type { FieldName } from '../../state/shot-fields';
import type { ShotModel } from '../../state/shot-model';
import { formatNumber } from '../../units/format-number';
import './ValueSlider.css';

interface Props {
  readonly model: ShotModel;
  readonly name: FieldName;
  readonly label: string;
}

/** A slider over the usual part of a number's range: a shortcut beside the buttons. */
export function ValueSlider({ model, name, label }: Props) {
  const { figure, facts, usual } = model.fields[name].value;
  const { fineStep } = facts;
  return (
    <input
      type="range"
      class="value-slider"
      aria-label={`${label}, slider`}
      aria-valuetext={`${formatNumber(figure, facts)} ${facts.name}`}
      min={Math.ceil(usual.min / fineStep) * fineStep}
      max={Math.floor(usual.max / fineStep) * fineStep}
      step={fineStep}
      value={figure}
      onPointerDown={() => model.beginGesture()}
      onPointerUp={() => model.endGesture()}
      onPointerCancel={() => model.endGesture()}
      onInput={(event) => model.setFigure(name, tidy(event.currentTarget.valueAsNumber))}
    />
  );
}

/** A slider's steps add up with binary dust: 0.30000000000000004. */
function tidy(figure: number): number {
  return Number(figure.toPrecision(12));
}
