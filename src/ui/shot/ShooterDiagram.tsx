import { useComputed } from '@preact/signals';
import type { Label } from '../../diagram/canvas';
import { layOutShooterView, type ShooterView } from '../../diagram/shooter-view';
import type { Mark } from '../../diagram/view-labels';
import type { Models } from '../app-models';
import { Ball } from '../drawing-parts';
import { useCanvas } from '../use-canvas';
import { aimWindowWords } from './aim-window';
import { BallRuler } from './BallRuler';
import { shooterWords, staleWords } from './picture-words';
import { isRoomStale } from './room-of-field';
import './ShooterDiagram.css';

/** The object ball as the shooter sees it, the ghost ball on it, and where aim and stick pass. */
export function ShooterDiagram({
  app,
}: {
  app: Models<'shot' | 'room' | 'kit' | 'measure' | 'desk'>;
}) {
  const model = app.shot;
  const [holder, canvas] = useCanvas();
  const view = useComputed(() => {
    const last = model.lastAnswer.value;
    const { distanceM, cutRad } = last?.shot ?? model.shot.value;
    const marks = last?.answer ?? null;
    const { ballRadiusM } = last?.kit ?? app.kit.kit.value;
    const { lead } = app.desk.preferences.value;
    const band = last && app.room.room.value?.windows?.aimRad;
    const bandRad = band ? { low: band.low.value, high: band.high.value } : null;
    const scene = { ballRadiusM, distanceM, cutRad, lead, marks, bandRad };
    return layOutShooterView(scene, canvas.value);
  });
  const { widthPx, heightPx } = canvas.value;
  const isBandStale = isRoomStale(app);
  const words = staleWords(app) + shooterWords(model.lastAnswer.value, app.desk.preferences.value);
  const bandWords = isBandStale ? '' : aimWindowWords(app);
  return (
    <div class="shooter-diagram" ref={holder}>
      <svg
        role="img"
        aria-label={words + bandWords}
        width={widthPx}
        height={heightPx}
        viewBox={`0 0 ${widthPx} ${heightPx}`}
        class={model.stale.value ? 'is-stale' : undefined}
      >
        <Drawing view={view.value} isBandStale={isBandStale} />
      </svg>
    </div>
  );
}

function Drawing({ view, isBandStale }: { view: ShooterView; isBandStale: boolean }) {
  const { aim, stick, ruler, band } = view;
  const topY = (aim?.label.y ?? 0) - 10;
  return (
    <>
      <Ball ball={view.objectBall} class="object-ball" />
      <Ball ball={view.ghostBall} class="ghost-ball" />
      {band && (
        <rect
          class={isBandStale ? 'aim-band is-old' : 'aim-band'}
          x={band.fromX}
          width={Math.max(1, band.toX - band.fromX)}
          y={topY}
          height={ruler.y - topY}
        />
      )}
      {view.objectLabel && <Name label={view.objectLabel} text="object ball" />}
      {view.ghostLabel && <Name label={view.ghostLabel} text="ghost ball" />}
      <BallRuler ruler={ruler} />
      {stick && (
        <UprightMark mark={stick} topY={topY} toY={ruler.y} class="stick-mark" name="stick" />
      )}
      {aim && (
        <UprightMark
          mark={aim}
          topY={topY}
          toY={ruler.y}
          class="aim-mark"
          name={stick ? 'aim here' : 'aim and stick'}
        />
      )}
      {view.scaleNote && (
        <Name
          label={view.scaleNote}
          text={`view ${view.ballsAcross.toFixed(1)} balls wide`}
          class="scale-note"
        />
      )}
    </>
  );
}

function Name({ label, text, class: className }: { label: Label; text: string; class?: string }) {
  const [first, second] = className ? [text] : text.split(' ');
  return (
    <text class={className ?? 'ball-name'} x={label.x} y={label.y} text-anchor={label.anchor}>
      {first}
      {second && (
        <tspan x={label.x} dy="1.05em">
          {second}
        </tspan>
      )}
    </text>
  );
}

interface UprightProps {
  readonly mark: Mark;
  readonly topY: number;
  readonly toY: number;
  readonly class: string;
  readonly name: string;
}

function UprightMark({ mark, topY, toY, class: className, name }: UprightProps) {
  return (
    <g class={className}>
      <line x1={mark.x} x2={mark.x} y1={topY} y2={toY} />
      <Name label={mark.label} text={name} class="mark-name" />
    </g>
  );
}
