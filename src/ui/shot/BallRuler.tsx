import type { ReadonlySignal } from '@preact/signals';
import type { Tick } from '../../diagram/ball-ruler';
import type { ShooterView } from '../../diagram/shooter-view';
import { LivePath, Shown } from '../live-parts';
import { useSteady } from '../use-steady';

const TICK_PX = { whole: 11, half: 7, quarter: 4 } as const;

/** A rule in ball widths; the way from its zero to the aim line is drawn on it. */
export function BallRuler({ view }: { view: ReadonlySignal<ShooterView> }) {
  const reach = () => {
    const { aimX, zeroX, y } = view.value.ruler;
    return aimX === null ? null : `M${zeroX} ${y - 5}V${y + 5}M${zeroX} ${y}H${aimX}`;
  };
  const { ticks, y, fromX, toX } = useSteady(() => {
    const { aimX: _, ...rule } = view.value.ruler;
    return rule;
  }).value;
  return (
    <g class="ball-ruler">
      <line x1={fromX} x2={toX} y1={y} y2={y} />
      {ticks.map((tick) => (
        <RulerTick key={tick.balls} tick={tick} y={y} />
      ))}
      <Shown what={reach}>{(way) => <LivePath at={way} class="aim-reach" />}</Shown>
      <text class="end-word" x={fromX + 1} y={y} dy="1.75em">
        ← left
      </text>
      <text class="end-word" x={toX - 1} y={y} dy="1.75em" text-anchor="end">
        right →
      </text>
    </g>
  );
}

function RulerTick({ tick, y }: { tick: Tick; y: number }) {
  return (
    <>
      <line x1={tick.x} x2={tick.x} y1={y} y2={y + TICK_PX[tick.size]} />
      {tick.text !== '' && (
        <text x={tick.x} y={y} dy="1.75em" text-anchor="middle">
          {tick.text}
        </text>
      )}
    </>
  );
}
