import type { TrialShot } from '../../engine/fit/trials/trials';
import { traitsOf } from '../../state/measure/trial-traits';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { formatQuantity } from '../../units/format-number';
import type { LaterModels } from '../app-models';
import { speedName, tipWords } from './tip-words';
import '../shot/TipFace.css';
import './TipCard.css';

/** Where the tip strikes, drawn and told, how hard, and how high the butt is. */
export function TipCard({ app, shot }: { app: LaterModels<'kit'>; shot: TrialShot }) {
  const { side, height, elevationRad } = shot.stroke;
  const { ballRadiusM, tipRadiusM } = app.kit.kit.value;
  const tipRadius = app.kit.current.cues.value.tipDiameterM / 2 / ballRadiusM;
  const dome = 1 + tipRadiusM / ballRadiusM;
  const words = tipWords(shot.stroke);
  return (
    <div class="tip-card">
      <svg role="img" aria-label={`The cue ball’s face: ${words}`} viewBox="-1.05 -1.05 2.1 2.1">
        <circle class="tip-face-ball" r={1} />
        <path class="tip-face-cross" d="M-1 0H1M0 -1V1" />
        <circle class="tip-face-limit" r={0.5} />
        <circle class="tip-face-tip" cx={side * dome} cy={-height * dome} r={tipRadius} />
        <circle class="tip-face-contact" cx={side} cy={-height} r={0.09} />
      </svg>
      <p>
        {words} <b>{speedName(shot)}</b>
        {traitsOf(shot.trial).isRaised && (
          <span> butt up {formatQuantity(degreesOf(elevationRad), DEGREES)}</span>
        )}
      </p>
    </div>
  );
}
