import type { Point } from '../../diagram/canvas';
import type { BallName } from '../../engine/lie/position';

interface Props {
  /** How its edge is drawn. */
  readonly class: string;
  readonly name: BallName;
  readonly at: Point;
  readonly radiusPx: number;
}

/** Of a ball's radius: how high its number is, and the cue ball's dot. */
const NUMBER = 1.2;
const DOT = 0.3;

/** A ball on a table: by its number, the cue ball by its dot. */
export function NamedDot({ class: look, name, at: { x, y }, radiusPx }: Props) {
  const highPx = NUMBER * radiusPx;
  return (
    <>
      <circle class={look} cx={x} cy={y} r={radiusPx} />
      {name === 'cue' ? (
        <circle class="plain-dot" cx={x} cy={y} r={DOT * radiusPx} />
      ) : (
        <text
          class="stopped-number"
          text-anchor="middle"
          x={x}
          y={y + 0.35 * highPx}
          font-size={highPx}
        >
          {name}
        </text>
      )}
    </>
  );
}
