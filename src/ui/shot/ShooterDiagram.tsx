import { type ReadonlySignal, type Signal, useComputed, useSignal } from '@preact/signals';
import type { Canvas, Circle } from '../../diagram/canvas';
import type { ShooterPart } from '../../diagram/shooter-parts';
import { layOutShooterView, type ShooterView } from '../../diagram/shooter-view';
import type { LateParts, Models } from '../app-models';
import { fromLate } from '../from-late';
import { canvasAttributes, useCanvas } from '../use-canvas';
import { aimWindowWords } from './aim-window';
import type { Finger } from './finger';
import { shooterWords, staleWords } from './picture-words';
import { isRoomStale } from './room-of-field';
import { ShooterDrawing } from './ShooterDrawing';
import { shooterScene } from './shooter-scene';
import { useDrag } from './use-drag';
import { useRested } from './use-rested';
import './ShooterDiagram.css';

interface Props {
  readonly app: Models<'shot' | 'room' | 'kit' | 'measure' | 'desk'>;
  readonly hand: LateParts['hand'];
}

/**
 * What lies before the shooter: the balls, where aim and cue lie, how sure that is. The ghost ball
 * and the tip are dragged; a tap says what lies there, as does the button for who has no finger on it.
 */
export function ShooterDiagram({ app, hand }: Props) {
  const [holder, canvas, isMeasured] = useCanvas('.shooter-diagram');
  return (
    <div class="shooter-diagram" ref={holder}>
      {isMeasured.value && <Picture app={app} hand={hand} canvas={canvas} />}
    </div>
  );
}

function Picture({ app, hand, canvas }: Props & { readonly canvas: ReadonlySignal<Canvas> }) {
  const model = app.shot;
  const view = useComputed(() => layOutShooterView(shooterScene(app), canvas.value));
  const named = useSignal<ShooterPart | null>(null);
  const finger = useSignal<Finger | null>(null);
  const handlers = useDrag({
    model,
    grab: (at) => fromLate(hand, ({ shooterGrip }) => shooterGrip(app, view.peek(), at, finger)),
    onTap: (at) =>
      void fromLate(hand, ({ partUnder }) => {
        named.value = partUnder(view.peek(), at, named.peek());
      }),
  });
  const isBandStale = useComputed(() => isRoomStale(app));
  const hasNear = useComputed(() => view.value.near !== null).value;
  const hasBandNames = useComputed(() => view.value.bandLabels.length > 0).value;
  const here = hand.here.value;
  return (
    <>
      <div class="picture-touch" {...handlers}>
        <svg
          role="img"
          aria-label={useRested(model, () => labelOf(app))}
          {...canvasAttributes(canvas.value)}
          class={model.stale.value ? 'is-stale' : undefined}
          data-named={named.value ?? undefined}
        >
          <ShooterDrawing view={view} isBandStale={isBandStale} />
        </svg>
        <NearGrip ball={useRested(model, () => view.value.near?.ball ?? null)} />
      </div>
      {(hasNear || !hasBandNames) && (
        <button
          type="button"
          class={hasNear ? 'button what-is-what' : 'button what-is-what is-above'}
          aria-label="What is what in the picture"
          onClick={() =>
            void fromLate(hand, ({ nextPart }) => {
              named.value = nextPart(view.peek(), named.peek());
            })
          }
        >
          <span aria-hidden="true">?</span>
        </button>
      )}
      <PartLine named={named} view={view} words={here?.PART_WORDS} />
      {here && <here.OffFinger app={app} finger={finger} canvas={canvas} abovePx={0} />}
    </>
  );
}

function labelOf(app: Models<'shot' | 'room' | 'measure' | 'desk'>): string {
  const words = shooterWords(app.shot.lastAnswer.value, app.desk.preferences.value);
  return staleWords(app) + words + (isRoomStale(app) ? '' : aimWindowWords(app));
}

/**
 * Where a finger drags the tip all ways, which a browser looks up as it comes down. A part of a
 * drawing cannot say so: a box can.
 */
function NearGrip({ ball }: { ball: ReadonlySignal<Circle | null> }) {
  if (ball.value === null) return null;
  const { cx, cy, r } = ball.value;
  const reachPx = Math.max(24, r);
  const [left, top] = [`${cx - reachPx}px`, `${cy - reachPx}px`];
  const width = `${2 * reachPx}px`;
  return <div class="near-grip" style={{ left, top, width, height: width }} />;
}

/** What the part last tapped is, over the ruler's figures until the next tap. */
function PartLine({
  named,
  view,
  words,
}: {
  named: Signal<ShooterPart | null>;
  view: ReadonlySignal<ShooterView>;
  words: Readonly<Record<ShooterPart, string>> | undefined;
}) {
  const part = named.value;
  if (part === null) return <output class="part-line" />;
  const { near, ruler } = view.value;
  return (
    <output class="part-line" style={near ? { top: `${ruler.y + 3}px` } : { bottom: '0' }}>
      {words?.[part]}
    </output>
  );
}
