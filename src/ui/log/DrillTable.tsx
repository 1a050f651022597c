import { useComputed } from '@preact/signals';
import { layOutDrill } from '../../diagram/drill-view';
import { layOutTable } from '../../diagram/table-map';
import { pathsUntilFall } from '../../diagram/way-picture';
import type { DrillPosition, LaidDrill } from '../../state/log/kept-drills';
import type { Models } from '../app-models';
import { BallPaths } from '../choose/all-ways/WayPicture';
import { PlainTable } from '../PlainTable';
import { canvasAttributes, useCanvas } from '../use-canvas';
import { NamedDot } from './NamedDot';
import { usePlayed } from './use-played';
import './StoppedTable.css';

interface Props {
  readonly app: Models<'log'>;
  readonly drill: DrillPosition;
  readonly laid: LaidDrill;
}

/** Where the balls of a kept way lie on the table in play, the way of each, and where the cue points. */
export function DrillTable({ app, drill, laid }: Props) {
  const { log } = app;
  const [holder, canvas] = useCanvas();
  const shape = log.practice.shape.value;
  const map = useComputed(() => layOutTable(log.practice.shape.value, canvas.value)).value;
  const isDirect = drill.drill.kind === 'direct';
  const view = layOutDrill(laid.position, isDirect ? null : laid.stroke.aimRad, shape, map);
  const way = usePlayed(app, laid);
  return (
    <div ref={holder} class="test-table">
      <svg
        role="img"
        aria-label={`From above: ${laid.position.balls.length} balls as they are to lie, the way of each${
          isDirect ? '' : ', and the line that the cue points along'
        }`}
        {...canvasAttributes(canvas.value)}
      >
        <PlainTable shape={shape} map={map} endTextPx={canvas.value.textPx}>
          <path class="drill-aim" d={view.path} />
          <BallPaths paths={pathsUntilFall(way, map)} falls={way.falls} />
          {view.ring && <circle class="test-ring" {...view.ring} />}
          {view.balls.map(({ name, ...at }) => (
            <NamedDot
              key={name}
              class={name === 'cue' ? 'plain-cue-ball' : 'plain-ball'}
              name={name}
              at={at}
              radiusPx={view.radiusPx}
            />
          ))}
        </PlainTable>
      </svg>
    </div>
  );
}
