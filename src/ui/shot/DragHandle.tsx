import type { Point } from '../../diagram/canvas';
import { type Drawing, type Part, useAttributes } from '../live-drawing';

interface Props<V> {
  readonly of: Drawing<V>;
  readonly at: Part<V, Point>;
  /** Whether a ball lies in it, beside which the arrows stand. */
  readonly isAboutBall?: boolean;
}

const ARROWS = 'M-2.5 -3.5L-6 0L-2.5 3.5M2.5 -3.5L6 0L2.5 3.5';
const ABOUT_BALL = 'M-6.5 -3L-9.5 0L-6.5 3M6.5 -3L9.5 0L6.5 3';

/** A small ring with two arrows: here a finger takes hold, to drag across. */
export function DragHandle<V>({ of, at, isAboutBall = false }: Props<V>) {
  const place = useAttributes(of, (now) => {
    const { x, y } = at(now);
    return { transform: `translate(${x.toFixed(1)} ${y.toFixed(1)})` };
  });
  return (
    <g class="drag-handle" {...place}>
      <circle r={isAboutBall ? 12 : 9.5} />
      <path d={isAboutBall ? ABOUT_BALL : ARROWS} />
    </g>
  );
}
