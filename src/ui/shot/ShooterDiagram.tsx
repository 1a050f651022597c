import { type ReadonlySignal, type Signal, useComputed, useSignal } from '@preact/signals';
import type { Canvas } from '../../diagram/canvas';
import type { NearBall } from '../../diagram/near-ball';
import type { ShooterPart } from '../../diagram/shooter-parts';
import { layOutShooterView, type ShooterView } from '../../diagram/shooter-view';
import type { LateParts, Models } from '../app-models';
import { fromLate } from '../from-late';
import { useCanvas } from '../use-canvas';
import { aimWindowWords } from './aim-window';
import { shooterWords, staleWords } from './picture-words';
import { isRoomStale } from './room-of-field';
import { ShooterDrawing } from './ShooterDrawing';
import { shooterScene } from './shooter-scene';
import { useDrag } from './use-drag';
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
  const [holder, canvas, isMeasured] = useCanvas();
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
  const handlers = useDrag({
    model,
    grab: (at) => fromLate(hand, ({ shooterGrip }) => shooterGrip(app, view.peek(), at)),
    onTap: (at) =>
      void fromLate(hand, ({ partUnder }) => {
        named.value = partUnder(view.peek(), at, named.peek());
      }),
  });
  const { widthPx, heightPx } = canvas.value;
  const isBandStale = isRoomStale(app);
  const words = staleWords(app) + shooterWords(model.lastAnswer.value, app.desk.preferences.value);
  const bandWords = isBandStale ? '' : aimWindowWords(app);
  return (
    <>
      <div class="picture-touch" {...handlers}>
        <svg
          role="img"
          aria-label={words + bandWords}
          width={widthPx}
          height={heightPx}
          viewBox={`0 0 ${widthPx} ${heightPx}`}
          class={model.stale.value ? 'is-stale' : undefined}
          data-named={named.value ?? undefined}
        >
          <ShooterDrawing view={view.value} isBandStale={isBandStale} />
        </svg>
        {view.value.near && <NearGrip near={view.value.near} />}
      </div>
      {(view.value.near || view.value.bandLabels.length === 0) && (
        <button
          type="button"
          class={view.value.near ? 'button what-is-what' : 'button what-is-what is-above'}
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
      <PartLine named={named} view={view} words={hand.here.value?.PART_WORDS} />
    </>
  );
}

/** Where a finger drags the tip all ways. A part of a drawing cannot say so to a browser: a box can. */
function NearGrip({ near: { ball } }: { near: NearBall }) {
  const reachPx = Math.max(24, ball.r);
  const [left, top] = [`${ball.cx - reachPx}px`, `${ball.cy - reachPx}px`];
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
