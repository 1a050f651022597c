import type { RunScale } from '../../diagram/run-scale';
import { DragHandle } from './DragHandle';

/** How far the cue ball would roll, on a scale of table lengths; its handle is the speed. */
export function RunRow({ run }: { run: RunScale }) {
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
