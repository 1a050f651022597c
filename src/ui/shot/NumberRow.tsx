import { useComputed } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { FieldName } from '../../state/shot-fields';
import type { ShotModel } from '../../state/shot-model';
import { HoldButton } from '../controls/HoldButton';
import { NumberField } from '../controls/NumberField';
import './NumberRow.css';

export interface NumberRowProps {
  readonly model: ShotModel;
  readonly name: FieldName;
  readonly label: string;
  /** A short name to be seen, where there is more than one number. */
  readonly shownLabel?: string;
  /** What − and + do to it, such as "softer" and "firmer". */
  readonly less: string;
  readonly more: string;
  /** The unit, or the choice of it. */
  readonly unit: ComponentChildren;
}

/** One number: to press or to type. */
export function NumberRow({ model, name, label, shownLabel, less, more, unit }: NumberRowProps) {
  return (
    <div class="number-row">
      <HoldButton model={model} label={less} step={(coarse) => model.nudge(name, -1, coarse)}>
        −
      </HoldButton>
      <div class="number-and-unit">
        {shownLabel && <span aria-hidden="true">{shownLabel}</span>}
        <NumberField model={model} name={name} label={label} />
        {unit}
      </div>
      <HoldButton model={model} label={more} step={(coarse) => model.nudge(name, 1, coarse)}>
        +
      </HoldButton>
    </div>
  );
}

/** A fixed unit, where there is nothing to choose. */
export function FixedUnit({ model, name }: { model: ShotModel; name: FieldName }) {
  const facts = useComputed(() => model.fields[name].value.facts).value;
  return <abbr title={facts.name}>{facts.symbol}</abbr>;
}
