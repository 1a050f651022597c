import { useComputed } from '@preact/signals';
import type { Point } from '../../diagram/canvas';
import { layOutOverheadView } from '../../diagram/overhead-view';
import type { Models } from '../app-models';
import { Ball, Line } from '../drawing-parts';
import { useCanvas } from '../use-canvas';
import { staleWords, stripWords } from './picture-words';
import './OverheadStrip.css';

/** The shot from above: the cue ball's true path, the aim line and the straight line. */
export function OverheadStrip({ app }: { app: Models<'shot' | 'kit' | 'measure' | 'desk'> }) {
  const model = app.shot;
  const [holder, canvas] = useCanvas();
  const view = useComputed(() => {
    const last = model.lastAnswer.value;
    const { distanceM, cutRad } = last?.shot ?? model.shot.value;
    const { ballRadiusM } = last?.kit ?? app.kit.kit.value;
    const aimOffsetM = last?.answer.aimOffsetM ?? null;
    const scene = { ballRadiusM, distanceM, cutRad, aimOffsetM, path: model.path.value };
    return layOutOverheadView(scene, canvas.value);
  });
  const words = useComputed(
    () =>
      staleWords(app) +
      stripWords(
        model.lastAnswer.value,
        model.path.value,
        app.desk.preferences.value,
        app.kit.current.tables.value.lengthM,
      ),
  );
  const { widthPx, heightPx } = canvas.value;
  const { sideways, aim, target } = view.value;
  const scale = sideways === 1 ? 'sideways true' : `sideways ×${sideways}`;
  return (
    <div class="overhead-strip">
      <div class="overhead-drawing" ref={holder}>
        <svg
          role="img"
          aria-label={`From above, ${scale}. ${words}`}
          width={widthPx}
          height={heightPx}
          viewBox={`0 0 ${widthPx} ${heightPx}`}
          class={model.stale.value ? 'is-stale' : undefined}
        >
          <Line segment={view.value.straight} class="straight-line" />
          <Line segment={aim} class="aim-line" />
          <polyline class="ball-path" points={view.value.path.map(pair).join(' ')} />
          <Ball ball={view.value.cueBall} class="cue-ball" />
          <Ball ball={view.value.ghostBall} class="ghost-ball" />
          <Ball ball={view.value.objectBall} class="object-ball" />
          <Line segment={target} class="target-line" />
        </svg>
      </div>
      <p class="overhead-caption">
        <span>from above, {scale}</span>
      </p>
    </div>
  );
}

function pair({ x, y }: Point): string {
  return `${x.toFixed(1)},${y.toFixed(1)}`;
}
