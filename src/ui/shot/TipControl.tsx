import type { AppModels } from '../app-models';
import { HoldButton } from '../controls/HoldButton';
import { NumberField } from '../controls/NumberField';
import { TipFace } from './TipFace';
import { TIP_NUDGES } from './tip-nudges';
import './TipControl.css';

/** Where the tip touches the cue ball: to press, to touch, to drag or to type. */
export function TipControl({ app }: { app: AppModels }) {
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
        <span class="tip-number">
          <span aria-hidden="true">side</span>
          <NumberField model={model} name="side" label="Side, radii, plus is right" signed />
        </span>
        <span class="tip-number">
          <span aria-hidden="true">height</span>
          <NumberField model={model} name="height" label="Height, radii, plus is up" signed />
        </span>
      </div>
    </div>
  );
}
