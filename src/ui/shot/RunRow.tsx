import { useComputed } from '@preact/signals';
import type { RunScale } from '../../diagram/run-scale';
import { type Live, LiveLine, LivePath, LiveText, Shown } from '../live-parts';
import { useSteady } from '../use-steady';
import { DragHandle } from './DragHandle';

/** How far the cue ball would roll, on a scale of table lengths; its handle is the speed. */
export function RunRow({ run }: { run: Live<RunScale> }) {
  const way = () => {
    const { fromX, atX, y } = run();
    return { from: { x: fromX, y }, to: { x: atX, y } };
  };
  return (
    <g class="run-row">
      <Scale run={run} />
      <LiveLine at={way} class="run-way" />
      <Reach run={run} />
      <DragHandle at={() => way().to} />
    </g>
  );
}

function Scale({ run }: { run: Live<RunScale> }) {
  const { y, fromX, toX, ticks } = useSteady(() => {
    const { y, fromX, toX, ticks } = run();
    return { y, fromX, toX, ticks };
  }).value;
  return (
    <>
      <line class="run-scale" x1={fromX} x2={toX} y1={y} y2={y} />
      {ticks.map(({ x, figure }) => (
        <g key={x}>
          <line class="run-scale" x1={x} x2={x} y1={y - 3} y2={y + 3} />
          {figure !== '' && (
            <text x={x} y={y} dy="1.45em" text-anchor="middle">
              {figure}
            </text>
          )}
        </g>
      ))}
      <text x={0} y={y} dy="1.45em">
        lengths rolled
      </text>
    </>
  );
}

/** Where the softest stands that brings the object ball to the pocket, and what that is. */
function Reach({ run }: { run: Live<RunScale> }) {
  const mark = () => {
    const { reachX, y } = run();
    return reachX === null ? null : `M${reachX} ${y - 8}V${y + 8}`;
  };
  const words = useComputed(() => run().reachLabel?.text);
  return (
    <>
      <Shown what={mark}>{(at) => <LivePath at={at} class="run-reach" />}</Shown>
      <Shown what={() => run().reachLabel}>
        {(label) => <LiveText at={label}>{words}</LiveText>}
      </Shown>
    </>
  );
}
