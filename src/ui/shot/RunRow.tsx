import { useComputed } from '@preact/signals';
import { layOutRun } from '../../diagram/run-scale';
import { lengthsRun } from '../../units/table-run';
import type { Models, RunProps } from '../app-models';
import { DragHandle } from './DragHandle';
import { reachSpeedMps } from './reach-speed';
import { bedOf } from './run-bed';

/** How far the cue ball would roll, on a scale of table lengths; its handle is the speed. */
export function RunRow({ app, topY, canvas }: RunProps) {
  const run = layOutRun(useRuns(app).value, topY, canvas);
  const { y, fromX, toX, atX, reachX, reachLabel } = run;
  return (
    <g class="run-row">
      <line class="run-scale" x1={fromX} x2={toX} y1={y} y2={y} />
      {run.ticks.map(({ x, figure }) => (
        <g key={x}>
          <line class="run-scale" x1={x} x2={x} y1={y - 3} y2={y + 3} />
          {figure && (
            <text x={x} y={y} dy="1.45em" text-anchor="middle">
              {figure}
            </text>
          )}
        </g>
      ))}
      <text x={0} y={y} dy="1.45em">
        lengths rolled
      </text>
      <line class="run-way" x1={fromX} x2={atX} y1={y} y2={y} />
      {reachX !== null && <path class="run-reach" d={`M${reachX} ${y - 8}V${y + 8}`} />}
      {reachLabel && (
        <text x={reachLabel.x} y={reachLabel.y} text-anchor={reachLabel.anchor}>
          {reachLabel.text}
        </text>
      )}
      <DragHandle at={{ x: atX, y }} />
    </g>
  );
}

/** How far the ball rolls, and the softest that reaches the pocket: worked out where a speed changes. */
function useRuns({ shot, room, kit }: Models<'shot' | 'room' | 'kit'>) {
  const speedMps = useComputed(() => shot.shot.value.speedMps);
  const reachMps = useComputed(() => reachSpeedMps(room));
  const bed = useComputed(() => bedOf(kit));
  const runLengths = useComputed(() => lengthsRun(speedMps.value, bed.value));
  const reachLengths = useComputed(() =>
    reachMps.value === null ? null : lengthsRun(reachMps.value, bed.value),
  );
  return useComputed(() => ({ runLengths: runLengths.value, reachLengths: reachLengths.value }));
}
