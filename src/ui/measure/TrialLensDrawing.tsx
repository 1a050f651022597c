import { layOutTrialLens } from '../../diagram/trial-lens';
import { trialScene } from '../../diagram/trial-scene';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { AppModels } from '../app-models';
import { spareGapWords } from './step-words';
import { ballsApart, gapWords } from './trial-words';
import './TipCard.css';
import './TrialDrawing.css';

/** The balls of a set-up close up, with the gap between them. */
export function TrialLensDrawing({ app, shot }: { app: AppModels; shot: TrialShot }) {
  const { ballRadiusM } = app.kit.kit.value;
  const lens = layOutTrialLens(trialScene(shot, ballRadiusM, 'set-up'));
  if (!lens) return null;
  const { aim, gap } = lens;
  const { lengthUnit } = app.desk.preferences.value;
  const isGap = shot.trial === 'stop';
  const words = isGap
    ? `${gapWords(shot.setup.gapM, lengthUnit)} between the balls`
    : `cue ball ${spareGapWords(shot, { ballRadiusM, lengthUnit })}`;
  return (
    <div class="tip-card trial-lens">
      <svg role="img" aria-label={`Close up: ${words}.`} viewBox={lens.viewBox.join(' ')}>
        {aim && (
          <line class="trial-aim" x1={aim.from.x} y1={aim.from.y} x2={aim.to.x} y2={aim.to.y} />
        )}
        {lens.balls.map(({ kind, circle }) => (
          <circle key={`${kind} ${circle.cy}`} class={`trial-ball is-${kind}`} {...circle} />
        ))}
        {isGap && (
          <line class="trial-gap" x1={gap.from.x} y1={gap.from.y} x2={gap.to.x} y2={gap.to.y} />
        )}
      </svg>
      <p>
        {words} {isGap && <b>{ballsApart(shot.setup.gapM, ballRadiusM)}</b>}
      </p>
    </div>
  );
}
