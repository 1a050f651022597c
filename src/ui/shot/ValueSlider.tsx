import type { FieldName } from '../../state/shot-fields';
import { formatNumber } from '../../units/format-number';
import type { Models } from '../app-models';
import { sliderTrack } from './slider-track';
import { WindowBar } from './WindowBar';
import './ValueSlider.css';

interface Props {
  readonly app: Models<'shot' | 'room'>;
  readonly name: FieldName;
  readonly label: string;
  /** Whether to draw the room there is under it. */
  readonly hasWindow?: boolean;
}

/** A slider over the usual part of a number's range: a shortcut beside the buttons. */
export function ValueSlider({ app, name, label, hasWindow = false }: Props) {
  const model = app.shot;
  const field = model.fields[name].value;
  const { figure, facts } = field;
  const { min, max } = sliderTrack(field);
  return (
    <div class="value-slider">
      <input
        type="range"
        aria-label={`${label}, slider`}
        aria-valuetext={`${formatNumber(figure, facts)} ${facts.name}`}
        min={min}
        max={max}
        step={facts.fineStep}
        value={figure}
        onPointerDown={() => model.beginGesture(true)}
        onPointerUp={() => model.endGesture()}
        onPointerCancel={() => model.endGesture(true)}
        onInput={(event) => model.setFigure(name, tidy(event.currentTarget.valueAsNumber))}
      />
      {hasWindow && <WindowBar app={app} name={name} isUnderSlider />}
    </div>
  );
}

/** A slider's steps add up with binary dust: 0.30000000000000004. */
function tidy(figure: number): number {
  return Number(figure.toPrecision(12));
}
