import { type BarEnd, layOutWindowBar, shareAlongTrack } from '../../diagram/window-bar';
import type { Range } from '../../engine/numerics/range';
import type { FieldName } from '../../state/shot-fields';
import type { Models } from '../app-models';
import { fieldWindow, isRoomStale } from './room-of-field';
import './WindowBar.css';

interface Props {
  readonly app: Models<'shot' | 'room'>;
  readonly name: FieldName;
  /** What the bar spans, in the field's unit; left out, its usual range. */
  readonly track?: Range;
  /** Whether something else marks the present value. */
  readonly isUnmarked?: boolean;
}

/** How far an input may be off, as a bright piece of its usual range. */
export function WindowBar({ app, name, track, isUnmarked = false }: Props) {
  const { figure, usual } = app.shot.fields[name].value;
  const span = track ?? usual;
  const window = fieldWindow(app, name);
  const bar = window && layOutWindowBar(window, span);
  const now = percent(shareAlongTrack(figure, span));
  return (
    <svg class={isRoomStale(app) ? 'window-bar is-stale' : 'window-bar'} aria-hidden="true">
      <line class="bar-track" x2="100%" y1="9" y2="9" />
      {bar && (
        <>
          <line class="bar-room" x1={percent(bar.low.at)} x2={percent(bar.high.at)} y1="9" y2="9" />
          <EndMark end={bar.low} />
          <EndMark end={bar.high} />
        </>
      )}
      {!isUnmarked && (
        <svg x={now} overflow="visible" aria-hidden="true">
          <path d="M-4 -1h8l-4 5z" />
        </svg>
      )}
    </svg>
  );
}

/** A wall where the ball goes wide, a ring where something else ends the window. */
function EndMark({ end: { at, kind } }: { end: BarEnd }) {
  if (kind === 'open') return null;
  const x = percent(at);
  return kind === 'wide' ? (
    <line class="bar-wall" x1={x} x2={x} y1="4" y2="14" />
  ) : (
    <circle cx={x} cy="9" r="3.5" />
  );
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)}%`;
}
