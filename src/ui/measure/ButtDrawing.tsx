import { layOutButtView } from '../../diagram/trial-butt';
import type { Attempt } from '../../store/attempt';
import type { LaterModels } from '../app-models';
import { Ball, Line } from '../drawing-parts';
import { canvasAttributes, useCanvas } from '../use-canvas';
import { buttTarget } from './butt-words';
import './TrialDrawing.css';

/** The raised cue from the side, and how high its butt is to be. */
export function ButtDrawing({
  app,
  attempt,
}: {
  app: LaterModels<'measure' | 'desk'>;
  attempt: Attempt;
}) {
  const [holder, canvas] = useCanvas();
  const words = buttTarget(app, attempt);
  const view = layOutButtView(attempt.shot.stroke.elevationRad, canvas.value);
  const { cloth, ball, cue, height, label } = view;
  return (
    <div class="trial-drawing butt-drawing" ref={holder}>
      <svg
        role="img"
        aria-label={`The cue from the side: the middle of its butt end is ${words} above the cloth.`}
        {...canvasAttributes(canvas.value)}
      >
        <Line segment={cloth} class="trial-nose" />
        <Line segment={cue} class="butt-cue" />
        <Ball ball={ball} class="trial-ball is-cue" />
        <path
          class="trial-reading"
          d={`M${height.from.x} ${height.from.y}V${height.to.y}m-7 0h14m-14 ${height.from.y - height.to.y}h14`}
        />
        <text x={label.x} y={label.y}>
          {words}
        </text>
      </svg>
    </div>
  );
}
