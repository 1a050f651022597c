import type { ComponentChildren } from 'preact';
import type { FieldName } from '../../state/shot-fields';
import type { ShotModel } from '../../state/shot-model';
import { formatQuantity } from '../../units/format-number';
import { Choices } from '../controls/Choices';
import { HoldButton } from '../controls/HoldButton';
import { NumberField } from '../controls/NumberField';
import { isPicked, type QuickPick } from './quick-picks';
import { ValueSlider } from './ValueSlider';
import './NumberControl.css';

interface Props {
  readonly model: ShotModel;
  readonly name: Exclude<FieldName, 'side' | 'height'>;
  readonly label: string;
  /** What − and + do to it, such as "softer" and "firmer". */
  readonly less: string;
  readonly more: string;
  readonly picks: readonly QuickPick[];
  /** The unit, or the choice of it. */
  readonly unit: ComponentChildren;
  readonly children?: ComponentChildren;
}

/** One number: to press, to type, to drag or to pick. */
export function NumberControl({ model, name, label, less, more, picks, unit, children }: Props) {
  return (
    <div class="number-control">
      {children}
      <div class="number-row">
        <HoldButton model={model} label={less} step={(coarse) => model.nudge(name, -1, coarse)}>
          −
        </HoldButton>
        <div class="number-and-unit">
          <NumberField model={model} name={name} label={label} />
          {unit}
        </div>
        <HoldButton model={model} label={more} step={(coarse) => model.nudge(name, 1, coarse)}>
          +
        </HoldButton>
      </div>
      <ValueSlider model={model} name={name} label={label} />
      <Picks model={model} name={name} label={label} picks={picks} />
    </div>
  );
}

function Picks({ model, name, label, picks }: Pick<Props, 'model' | 'name' | 'label' | 'picks'>) {
  const { figure } = model.fields[name].value;
  return (
    <Choices
      label={`${label}: often used`}
      items={picks.map((pick) => ({ value: pick.figure, content: pick.label }))}
      isChosen={(pick) => isPicked(figure, pick)}
      onChoose={(pick) => model.setFigure(name, pick)}
    />
  );
}

/** A fixed unit, where there is nothing to choose. */
export function FixedUnit({ model, name }: { model: ShotModel; name: FieldName }) {
  const { facts } = model.fields[name].value;
  return <abbr title={facts.name}>{formatQuantity(0, facts).replace('0', '')}</abbr>;
}
