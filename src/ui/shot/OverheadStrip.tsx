import { type ReadonlySignal, type Signal, useComputed, useSignal } from '@preact/signals';
import type { Canvas } from '../../diagram/canvas';
import {
  layOutOverheadView,
  type OverheadView,
  type Segment,
  SIDEWAYS,
} from '../../diagram/overhead-view';
import type { LateParts, Models } from '../app-models';
import { fromLate } from '../from-late';
import { useAttributes, useDrawing } from '../live-drawing';
import { LiveBall, LiveLine, LivePath, pointsOf, Shown } from '../live-parts';
import { canvasAttributes, useCanvas } from '../use-canvas';
import { DragHandle } from './DragHandle';
import type { Finger } from './finger';
import { staleWords, stripWords } from './picture-words';
import { useDrag } from './use-drag';
import { useRested } from './use-rested';
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
  const [holder, canvas, isMeasured] = useCanvas('.overhead-drawing');
  const finger = useSignal<Finger | null>(null);
  const here = hand.here.value;
  return (
    <div class="overhead-strip">
      <div class="overhead-drawing" ref={holder}>
        {isMeasured.value && <Drawing app={app} hand={hand} canvas={canvas} finger={finger} />}
      </div>
      {here && <here.OffFinger app={app} finger={finger} canvas={canvas} abovePx={80} />}
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

interface DrawingProps extends Props {
  readonly canvas: ReadonlySignal<Canvas>;
  readonly finger: Signal<Finger | null>;
}

function Drawing({ app, hand, canvas, finger }: DrawingProps) {
  const model = app.shot;
  const view = useComputed(() => layOutOverheadView(stripScene(app), canvas.value));
  const handlers = useDrag({
    model,
    grab: (at) =>
      fromLate(hand, ({ stripGrip }) => stripGrip(app, view.peek(), canvas.peek(), at, finger)),
  });
  const runTopY = useComputed(() => view.value.runTopY);
  const RunRow = hand.here.value?.RunRow;
  return (
    <svg
      role="img"
      aria-label={useRested(model, () => labelOf(app))}
      {...canvasAttributes(canvas.value)}
      class={model.stale.value ? 'is-stale' : undefined}
      {...handlers}
    >
      <StripDrawing view={view} />
      {RunRow && runTopY.value !== null && <RunRow app={app} topY={runTopY} canvas={canvas} />}
    </svg>
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
      <LivePath of={of} at={({ target }) => wayOf(target)} class="target-line" />
    </>
  );
}

/** A stretch whose both ends move, as one attribute. */
function wayOf({ from, to }: Segment): string {
  return `M${from.x} ${from.y}L${to.x} ${to.y}`;
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
