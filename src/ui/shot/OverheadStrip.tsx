import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { Canvas, Point } from '../../diagram/canvas';
import { layOutOverheadView, SIDEWAYS } from '../../diagram/overhead-view';
import type { LateParts, Models } from '../app-models';
import { Ball, Line } from '../drawing-parts';
import { fromLate } from '../from-late';
import { useCanvas } from '../use-canvas';
import { DragHandle } from './DragHandle';
import { staleWords, stripWords } from './picture-words';
import { useDrag } from './use-drag';
import './OverheadStrip.css';

interface Props {
  readonly app: Models<'shot' | 'room' | 'kit' | 'measure' | 'desk'>;
  readonly hand: LateParts['hand'];
}

/**
 * The shot from above on one scale: the cue ball's true path, the aim line and the straight line;
 * under it how far the cue ball would roll. The cue ball is dragged for distance, the run for speed.
 */
export function OverheadStrip({ app, hand }: Props) {
  const [holder, canvas, isMeasured] = useCanvas();
  return (
    <div class="overhead-strip">
      <div class="overhead-drawing" ref={holder}>
        {isMeasured.value && <Drawing app={app} hand={hand} canvas={canvas} />}
      </div>
      <p class="overhead-caption">
        <span>
          <span class="caption-long">from above, </span>
          sideways ×{SIDEWAYS}
        </span>
        <span>
          <Sample class="aim-line" /> aim line
        </span>
        <span>
          <Sample class="ball-path" /> cue ball’s way
        </span>
      </p>
    </div>
  );
}

function Drawing({ app, hand, canvas }: Props & { readonly canvas: ReadonlySignal<Canvas> }) {
  const model = app.shot;
  const view = useComputed(() => layOutOverheadView(stripScene(app), canvas.value));
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
  const handlers = useDrag({
    model,
    grab: (at) => fromLate(hand, ({ stripGrip }) => stripGrip(app, view.peek(), canvas.peek(), at)),
  });
  const { widthPx, heightPx } = canvas.value;
  const { aim, target, runTopY, cueBall } = view.value;
  const RunRow = hand.here.value?.RunRow;
  return (
    <svg
      role="img"
      aria-label={`From above, sideways ×${SIDEWAYS}. ${words}`}
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      class={model.stale.value ? 'is-stale' : undefined}
      {...handlers}
    >
      <Line segment={view.value.straight} class="straight-line" />
      <Line segment={aim} class="aim-line" />
      <polyline class="ball-path" points={view.value.path.map(pair).join(' ')} />
      <DragHandle at={{ x: cueBall.cx, y: cueBall.cy }} isAboutBall />
      <Ball ball={{ ...cueBall, r: Math.min(4.5, cueBall.r) }} class="cue-ball" />
      <Ball ball={view.value.ghostBall} class="ghost-ball" />
      <Ball ball={view.value.objectBall} class="object-ball" />
      <Line segment={target} class="target-line" />
      {RunRow && runTopY !== null && <RunRow app={app} topY={runTopY} canvas={canvas.value} />}
    </svg>
  );
}

function stripScene({ shot: model, kit }: Models<'shot' | 'kit'>) {
  const last = model.lastAnswer.value;
  const { distanceM, cutRad } = model.shot.value;
  // The lines of another shot would not end at these balls.
  const isAnswered = model.result.value.ok;
  const { ballRadiusM } = last?.kit ?? kit.kit.value;
  const tableLengthM = kit.current.tables.value.lengthM;
  return {
    ballRadiusM,
    tableLengthM,
    distanceM,
    cutRad,
    aimOffsetM: isAnswered && last ? last.answer.aimOffsetM : null,
    path: isAnswered ? model.path.value : [],
  };
}

/** How a line of the drawing looks, beside its name. */
function Sample({ class: className }: { class: string }) {
  return (
    <svg class="line-sample" width="20" height="6" aria-hidden="true">
      <line class={className} x1="0" x2="20" y1="3" y2="3" />
    </svg>
  );
}

function pair({ x, y }: Point): string {
  return `${x.toFixed(1)},${y.toFixed(1)}`;
}
