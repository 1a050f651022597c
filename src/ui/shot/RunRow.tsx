import { type ReadonlySignal, useComputed } from '@preact/signals';
import { layOutRun, type RunScale } from '../../diagram/run-scale';
import { lengthsRun } from '../../units/table-run';
import type { Models, RunProps } from '../app-models';
import { type Drawing, useDrawing, useSteadyPart } from '../live-drawing';
import { LiveLine, LivePath, LiveText, LiveWord, Shown } from '../live-parts';
import { DragHandle } from './DragHandle';
import { reachSpeedMps } from './reach-speed';
import { bedOf } from './run-bed';

/** How far the cue ball would roll, on a scale of table lengths; its handle is the speed. */
export function RunRow(props: RunProps) {
  const of = useDrawing(useRun(props));
  return (
    <g class="run-row">
      <Scale of={of} />
      <LiveLine of={of} at={wayOf} class="run-way" />
      <Shown of={of} what={reachOf}>
        {(mark) => <LivePath of={of} at={mark} class="run-reach" />}
      </Shown>
      <Shown of={of} what={({ reachLabel }) => reachLabel}>
        {(label) => (
          <LiveText of={of} at={label}>
            <LiveWord of={of} word={(now) => label(now).text} />
          </LiveText>
        )}
      </Shown>
      <DragHandle of={of} at={({ atX, y }) => ({ x: atX, y })} />
    </g>
  );
}

function wayOf({ fromX, atX, y }: RunScale) {
  return { from: { x: fromX, y }, to: { x: atX, y } };
}

/** Where the softest stands that brings the object ball to the pocket. */
function reachOf({ reachX, y }: RunScale): string | null {
  return reachX === null ? null : `M${reachX} ${y - 8}V${y + 8}`;
}

function Scale({ of }: { of: Drawing<RunScale> }) {
  const { y, fromX, toX, ticks } = useSteadyPart(of, ({ y, fromX, toX, ticks }) => {
    return { y, fromX, toX, ticks };
  });
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

/** The scale as it lies; without room for it nobody looks. */
function useRun({ app, topY, canvas }: RunProps): ReadonlySignal<RunScale> {
  const runs = useRuns(app);
  return useComputed(() => layOutRun(runs.value, topY.value ?? 0, canvas.value));
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
