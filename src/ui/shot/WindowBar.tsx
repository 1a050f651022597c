import { useComputed } from '@preact/signals';
import { type BarEnd, layOutWindowBar, shareAlongTrack } from '../../diagram/window-bar';
import type { FieldName } from '../../state/shot-fields';
import type { Models } from '../app-models';
import { useSteady } from '../use-steady';
import { fieldWindow, isRoomStale } from './room-of-field';
import { sliderTrack } from './slider-track';
import './WindowBar.css';

interface Props {
  readonly app: Models<'shot' | 'room'>;
  readonly name: FieldName;
  /** Whether it lies under a slider, which marks the present value and has whole steps. */
  readonly isUnderSlider?: boolean;
}

/** How far an input may be off, as a bright piece of its usual range. */
export function WindowBar({ app, name, isUnderSlider = false }: Props) {
  const bar = useSteady(() => {
    const window = fieldWindow(app, name);
    const field = app.shot.fields[name].value;
    return window && layOutWindowBar(window, isUnderSlider ? sliderTrack(field) : field.usual);
  }).value;
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
      {!isUnderSlider && <Present app={app} name={name} />}
    </svg>
  );
}

/** Where the input now stands. */
function Present({ app, name }: Omit<Props, 'isUnderSlider'>) {
  const now = useComputed(() => {
    const { figure, usual } = app.shot.fields[name].value;
    return percent(shareAlongTrack(figure, usual));
  });
  return (
    <svg x={now} overflow="visible" aria-hidden="true">
      <path d="M-4 -1h8l-4 5z" />
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
