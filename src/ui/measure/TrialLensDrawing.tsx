import { layOutTrialLens } from '../../diagram/trial-lens';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { LaterModels } from '../app-models';
import { Ball, Line } from '../drawing-parts';
import { FACES, sceneOf } from './trials/faces';
import './TipCard.css';
import './TrialDrawing.css';

/** The balls of a set-up close up, with the gap between them. */
export function TrialLensDrawing({
  app,
  shot,
}: {
  app: LaterModels<'kit' | 'desk'>;
  shot: TrialShot;
}) {
  const { ballRadiusM } = app.kit.kit.value;
  const { lengthUnit } = app.desk.preferences.value;
  const told = FACES[shot.trial].lens?.(shot, { ballRadiusM, lengthUnit });
  const lens = layOutTrialLens(sceneOf(shot, ballRadiusM, 'set-up'));
  if (!lens || !told) return null;
  const { aim, gap } = lens;
  const { words, gap: gapByEye } = told;
  return (
    <div class="tip-card trial-lens">
      <svg role="img" aria-label={`Close up: ${words}.`} viewBox={lens.viewBox.join(' ')}>
        <Line segment={aim} class="trial-aim" />
        {lens.balls.map(({ kind, circle }) => (
          <Ball key={`${kind} ${circle.cy}`} ball={circle} class={`trial-ball is-${kind}`} />
        ))}
        {gapByEye && <Line segment={gap} class="trial-gap" />}
      </svg>
      <p>
        {words} {gapByEye && <b>{gapByEye}</b>}
      </p>
    </div>
  );
}
