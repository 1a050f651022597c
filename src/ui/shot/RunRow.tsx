import type { RunScale } from '../../diagram/run-scale';
import { DragHandle } from './DragHandle';

/** How far the cue ball would roll, on a scale of table lengths; its handle is the speed. */
export function RunRow({ run }: { run: RunScale }) {
  const { y, fromX, toX, atX, reachX, reachLabel } = run;
  return (
    <g class="run-row">
      <line class="run-scale" x1={fromX} x2={toX} y1={y} y2={y} />
      {run.ticks.map(({ x, lengths }) => (
        <g key={lengths}>
          <line class="run-scale" x1={x} x2={x} y1={y - 3} y2={y + 3} />
          <text x={x} y={y} dy="1.35em" text-anchor="middle">
            {lengths === 0 ? 'rolls' : lengths}
          </text>
        </g>
      ))}
      <text x={toX + 18} y={y} dy="1.35em" text-anchor="end" class="run-unit">
        {' '}
      </text>
      <line class="run-way" x1={fromX} x2={atX} y1={y} y2={y} />
      {reachX !== null && <path class="run-reach" d={`M${reachX} ${y - 8}V${y + 8}`} />}
      {reachLabel && (
        <text x={reachLabel.x} y={reachLabel.y} text-anchor={reachLabel.anchor}>
          reaches the pocket
        </text>
      )}
      <DragHandle at={{ x: atX, y }} ways="across" />
    </g>
  );
}
