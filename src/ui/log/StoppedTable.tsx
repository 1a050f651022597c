import { useComputed } from '@preact/signals';
import { heldOnBed } from '../../diagram/held-on-bed';
import { ballSize } from '../../diagram/table-balls';
import { layOutTable, stepOnTable } from '../../diagram/table-map';
import type { Point } from '../../engine/table/point';
import { shapeOf } from '../../state/table-in-play';
import type { PlayedShot } from '../../store/player';
import type { Models } from '../app-models';
import { spotWords } from '../choose/table-words';
import { PlainTable } from '../PlainTable';
import { canvasAttributes, useCanvas } from '../use-canvas';
import { NamedDot } from './NamedDot';
import './StoppedTable.css';

interface Props {
  readonly app: Models<'kit'>;
  readonly shot: PlayedShot;
  onStopped(at: Point | null): void;
}

/** Arrow keys, as seen on the screen. */
const KEYS: Readonly<Record<string, readonly [right: number, up: number]>> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};
/** Of the table's length: a quarter of a diamond, and with Shift half of one. */
const STEP_SHARE = 1 / 32;
const LONG_STEP_SHARE = 1 / 16;
/** Where the cue ball stopped: a tap on the table, or the arrow keys. */
export function StoppedTable({ app: { kit }, shot, onStopped }: Props) {
  const [holder, canvas] = useCanvas();
  const { position, cueBall } = shot;
  const inPlay = kit.current.tables.value;
  const shape = shapeOf(position ?? inPlay);
  const map = useComputed(() => layOutTable(shape, canvas.value)).value;
  const { ballRadiusM } = shot.kit;
  const { radiusPx } = ballSize(ballRadiusM, map);
  const put = (xM: number, yM: number) => {
    const held = heldOnBed({ xM, yM }, shape, ballRadiusM);
    onStopped({ x: held.xM, y: held.yM });
  };
  const words = cueBall ? spotWords({ xM: cueBall.x, yM: cueBall.y }, shape) : 'not said';
  const stopped = cueBall && map.toPoint({ xM: cueBall.x, yM: cueBall.y });
  return (
    <div class="stopped">
      <div
        ref={holder}
        class="stopped-table"
        role="slider"
        aria-label="Where the cue ball stopped"
        aria-valuemin={-shape.widthM / 2}
        aria-valuemax={shape.widthM / 2}
        aria-valuenow={cueBall?.x ?? 0}
        aria-valuetext={words}
        tabIndex={0}
        onKeyDown={(event) => {
          const way = KEYS[event.key];
          if (way === undefined) return;
          event.preventDefault();
          const stepM = (event.shiftKey ? LONG_STEP_SHARE : STEP_SHARE) * shape.lengthM;
          const step = stepOnTable(map.isTurned, way[0] * stepM, way[1] * stepM);
          put((cueBall?.x ?? 0) + step.rightM, (cueBall?.y ?? 0) + step.upM);
        }}
      >
        <svg
          aria-hidden="true"
          {...canvasAttributes(canvas.value)}
          onPointerUp={(event) => {
            const box = event.currentTarget.getBoundingClientRect();
            const at = { x: event.clientX - box.left, y: event.clientY - box.top };
            const { xM, yM } = map.toSpot(at);
            put(xM, yM);
          }}
        >
          <PlainTable shape={shape} map={map} endTextPx={canvas.value.textPx}>
            {position?.balls.map(({ name, ...spot }) => (
              <NamedDot
                key={name}
                class="stopped-before"
                name={name}
                at={map.toPoint(spot)}
                radiusPx={radiusPx}
              />
            ))}
            {stopped && (
              <>
                <circle class="stopped-ring" cx={stopped.x} cy={stopped.y} r={radiusPx + 5} />
                <circle class="plain-cue-ball" cx={stopped.x} cy={stopped.y} r={radiusPx} />
              </>
            )}
          </PlainTable>
        </svg>
      </div>
      <div class="stopped-foot">
        <p role="status">
          {cueBall
            ? `It stopped ${words}.`
            : 'Tap where the cue ball stopped. Dashed: where the balls lay, the dot the cue ball.'}
        </p>
        {cueBall && (
          <button type="button" class="button" onClick={() => onStopped(null)}>
            Take it off
          </button>
        )}
      </div>
    </div>
  );
}
