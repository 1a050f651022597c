import type { Ruler, Tick } from '../../diagram/ball-ruler';

const TICK_PX = { whole: 11, half: 7, quarter: 4 } as const;

/** A rule in ball widths; the way from its zero to the aim line is drawn on it. */
export function BallRuler({ ruler }: { ruler: Ruler }) {
  const { y, aimX, zeroX } = ruler;
  return (
    <g class="ball-ruler">
      <line x1={ruler.fromX} x2={ruler.toX} y1={y} y2={y} />
      <path class="ruler-ticks" d={ruler.ticks.map((tick) => tickPath(tick, y)).join('')} />
      {ruler.ticks.map(
        ({ balls, text, x }) =>
          text && (
            <text key={balls} x={x} y={y} dy="1.75em" text-anchor="middle">
              {text}
            </text>
          ),
      )}
      {aimX !== null && (
        <path class="aim-reach" d={`M${zeroX} ${y - 5}V${y + 5}M${zeroX} ${y}H${aimX}`} />
      )}
      <text class="end-word" x={ruler.fromX + 1} y={y} dy="1.75em">
        ← left
      </text>
      <text class="end-word" x={ruler.toX - 1} y={y} dy="1.75em" text-anchor="end">
        right →
      </text>
    </g>
  );
}

function tickPath({ x, size }: Tick, y: number): string {
  return `M${x} ${y}v${TICK_PX[size]}`;
}
