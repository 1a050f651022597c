import type { Tick } from '../../diagram/ball-ruler';
import type { ShooterView } from '../../diagram/shooter-view';
import { type Drawing, useSteadyPart } from '../live-drawing';
import { LivePath, Shown } from '../live-parts';

const TICK_PX = { whole: 11, half: 7, quarter: 4 } as const;

/** A rule in ball widths; the way from its zero to the aim line is drawn on it. */
export function BallRuler({ of }: { of: Drawing<ShooterView> }) {
  const { ticks, y, fromX, toX } = useSteadyPart(of, ({ ruler: { aimX: _, ...rule } }) => rule);
  return (
    <g class="ball-ruler">
      <line x1={fromX} x2={toX} y1={y} y2={y} />
      <path class="ruler-ticks" d={ticks.map((tick) => tickPath(tick, y)).join('')} />
      {ticks.map(
        ({ balls, text, x }) =>
          text && (
            <text key={balls} x={x} y={y} dy="1.75em" text-anchor="middle">
              {text}
            </text>
          ),
      )}
      <Shown of={of} what={reachOf}>
        {(way) => <LivePath of={of} at={way} class="aim-reach" />}
      </Shown>
      <text class="end-word" x={fromX + 1} y={y} dy="1.75em">
        ← left
      </text>
      <text class="end-word" x={toX - 1} y={y} dy="1.75em" text-anchor="end">
        right →
      </text>
    </g>
  );
}

function reachOf({ ruler: { aimX, zeroX, y } }: ShooterView): string | null {
  return aimX === null ? null : `M${zeroX} ${y - 5}V${y + 5}M${zeroX} ${y}H${aimX}`;
}

function tickPath({ x, size }: Tick, y: number): string {
  return `M${x} ${y}v${TICK_PX[size]}`;
}
