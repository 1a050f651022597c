import type { FieldName } from '../../state/shot-fields';
import type { Models } from '../app-models';
import { HoldButton } from '../controls/HoldButton';
import { NumberField } from '../controls/NumberField';
import { TipFace } from './TipFace';
import { TIP_NUDGES } from './tip-nudges';
import { WindowBar } from './WindowBar';
import { WindowWords } from './WindowWords';
import './TipControl.css';

/** Where the tip touches the cue ball: to press, to touch, to drag or to type. */
export function TipControl({ app }: { app: Models<'shot' | 'room' | 'kit' | 'desk'> }) {
  const model = app.shot;
  return (
    <div class="tip-control">
      <TipFace app={app} />
      <div class="tip-pad">
        {TIP_NUDGES.map(({ field, towards, arrow, label }) => (
          <div key={label} class={`tip-pad-${label}`}>
            <HoldButton
              model={model}
              label={`Tip ${label}`}
              step={(coarse) => model.nudge(field, towards, coarse)}
            >
              {arrow}
            </HoldButton>
          </div>
        ))}
        <button
          type="button"
          class="button tip-pad-centre"
          aria-label="Tip to the centre"
          onClick={() => model.setTip(0, 0)}
        >
          <span aria-hidden="true">◎</span>
        </button>
      </div>
      <div class="tip-numbers">
        <TipNumber app={app} name="side" label="Side, left or right" />
        <TipNumber app={app} name="height" label="Height, high or low" />
      </div>
    </div>
  );
}

interface NumberProps {
  readonly app: Models<'shot' | 'room'>;
  readonly name: Extract<FieldName, 'side' | 'height'>;
  readonly label: string;
}

function TipNumber({ app, name, label }: NumberProps) {
  return (
    <div class="tip-number">
      <span aria-hidden="true">{name}</span>
      <span>{app.shot.fields[name].value.facts.symbol}</span>
      <NumberField model={app.shot} name={name} label={label} signed />
      <WindowBar app={app} name={name} />
      <WindowWords app={app} name={name} isShort />
    </div>
  );
}
