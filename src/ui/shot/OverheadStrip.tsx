import { type ReadonlySignal, useComputed } from '@preact/signals';
import { layOutOverheadView, type OverheadView, SIDEWAYS } from '../../diagram/overhead-view';
import { lengthsRun } from '../../units/table-run';
import type { Models } from '../app-models';
import { useAttributes, useDrawing } from '../live-drawing';
import { LiveBall, LiveLine, pointsOf, Shown } from '../live-parts';
import { useCanvas, useCanvasAttributes } from '../use-canvas';
import { DragHandle } from './DragHandle';
import { stripGrip } from './picture-grips';
import { staleWords, stripWords } from './picture-words';
import { RunRow } from './RunRow';
import { reachSpeedMps } from './reach-speed';
import { useDrag } from './use-drag';
import { useRested } from './use-rested';
import './OverheadStrip.css';

/**
 * The shot from above on one scale: the cue ball's true path, the aim line and the straight line;
 * under it how far the cue ball would roll. The cue ball is dragged for distance, the run for speed.
 */
export function OverheadStrip({
  app,
}: {
  app: Models<'shot' | 'room' | 'kit' | 'measure' | 'desk'>;
}) {
  const model = app.shot;
  const [holder, canvas] = useCanvas();
  const runs = useRuns(app);
  const view = useComputed(() =>
    layOutOverheadView({ ...stripScene(app), ...runs.value }, canvas.value),
  );
  const handlers = useDrag({ model, grab: (at) => stripGrip(app, view.peek(), at) });
  const size = useCanvasAttributes(canvas);
  return (
    <div class="overhead-strip">
      <div class="overhead-drawing" ref={holder}>
        <svg
          role="img"
          aria-label={useRested(model, () => labelOf(app))}
          {...size}
          class={model.stale.value ? 'is-stale' : undefined}
          {...handlers}
        >
          <StripDrawing view={view} />
        </svg>
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

function labelOf(app: Models<'shot' | 'kit' | 'measure' | 'desk'>): string {
  const { lastAnswer, path } = app.shot;
  const preferences = app.desk.preferences.value;
  const { lengthM } = app.kit.current.tables.value;
  const words = stripWords(lastAnswer.value, path.value, preferences, lengthM);
  return `From above, sideways ×${SIDEWAYS}. ${staleWords(app)}${words}`;
}

function StripDrawing({ view }: { view: ReadonlySignal<OverheadView> }) {
  const of = useDrawing(view);
  return (
    <>
      <LiveLine of={of} at={({ straight }) => straight} class="straight-line" />
      <Shown of={of} what={({ aim }) => aim}>
        {(aim) => <LiveLine of={of} at={aim} class="aim-line" />}
      </Shown>
      <polyline
        class="ball-path"
        {...useAttributes(of, ({ path }) => ({ points: pointsOf(path) }))}
      />
      <DragHandle of={of} at={({ cueBall: { cx, cy } }) => ({ x: cx, y: cy })} isAboutBall />
      <LiveBall
        of={of}
        at={({ cueBall }) => ({ ...cueBall, r: Math.min(4.5, cueBall.r) })}
        class="cue-ball"
      />
      <LiveBall of={of} at={({ ghostBall }) => ghostBall} class="ghost-ball" />
      <LiveBall of={of} at={({ objectBall }) => objectBall} class="object-ball" />
      <LiveLine of={of} at={({ target }) => target} class="target-line" />
      <Shown of={of} what={({ run }) => run}>
        {(run) => <RunRow of={of} run={run} />}
      </Shown>
    </>
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

/** How far the ball rolls, and the softest that reaches the pocket: worked out where a speed changes. */
function useRuns({ shot, room, kit }: Models<'shot' | 'room' | 'kit'>) {
  const speedMps = useComputed(() => shot.shot.value.speedMps);
  const reachMps = useComputed(() => reachSpeedMps(room));
  const lengthsOf = (mps: number) =>
    lengthsRun(mps, { tableLengthM: kit.current.tables.value.lengthM, kit: kit.kit.value });
  const runLengths = useComputed(() => lengthsOf(speedMps.value));
  const reachLengths = useComputed(() =>
    reachMps.value === null ? null : lengthsOf(reachMps.value),
  );
  return useComputed(() => ({ runLengths: runLengths.value, reachLengths: reachLengths.value }));
}

/** How a line of the drawing looks, beside its name. */
function Sample({ class: className }: { class: string }) {
  return (
    <svg class="line-sample" width="20" height="6" aria-hidden="true">
      <line class={className} x1="0" x2="20" y1="3" y2="3" />
    </svg>
  );
}
