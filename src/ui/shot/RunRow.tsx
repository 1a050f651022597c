import type { OverheadView } from '../../diagram/overhead-view';
import type { RunScale } from '../../diagram/run-scale';
import { type Drawing, type Part, useSteadyPart } from '../live-drawing';
import { LiveLine, LivePath, LiveText, LiveWord, Shown } from '../live-parts';
import { DragHandle } from './DragHandle';

interface Props {
  readonly of: Drawing<OverheadView>;
  readonly run: Part<OverheadView, RunScale>;
}

/** How far the cue ball would roll, on a scale of table lengths; its handle is the speed. */
export function RunRow({ of, run }: Props) {
  const handle = (now: OverheadView) => ({ x: run(now).atX, y: run(now).y });
  const start = (now: OverheadView) => ({ x: run(now).fromX, y: run(now).y });
  return (
    <g class="run-row">
      <Scale of={of} run={run} />
      <LiveLine of={of} at={(now) => ({ from: start(now), to: handle(now) })} class="run-way" />
      <Shown of={of} what={(now) => reachOf(run(now))}>
        {(mark) => <LivePath of={of} at={mark} class="run-reach" />}
      </Shown>
      <Shown of={of} what={(now) => run(now).reachLabel}>
        {(label) => (
          <LiveText of={of} at={label}>
            <LiveWord of={of} word={(now) => label(now).text} />
          </LiveText>
        )}
      </Shown>
      <DragHandle of={of} at={handle} />
    </g>
  );
}

/** Where the softest stands that brings the object ball to the pocket. */
function reachOf({ reachX, y }: RunScale): string | null {
  return reachX === null ? null : `M${reachX} ${y - 8}V${y + 8}`;
}

function Scale({ of, run }: Props) {
  const { y, fromX, toX, ticks } = useSteadyPart(of, (now) => {
    const { y, fromX, toX, ticks } = run(now);
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
