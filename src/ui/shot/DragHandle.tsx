import type { Point } from '../../diagram/canvas';

interface Props {
  readonly at: Point;
  /** Which ways it can be dragged. */
  readonly ways: 'across' | 'all';
}

const ACROSS = 'M-3 -3.5L-6.5 0L-3 3.5M3 -3.5L6.5 0L3 3.5';
const UP_AND_DOWN = 'M-3.5 -3L0 -6.5L3.5 -3M-3.5 3L0 6.5L3.5 3';

/** A small ring with arrows: here a finger takes hold. */
export function DragHandle({ at, ways }: Props) {
  return (
    <g class="drag-handle" transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}>
      <circle r="10" />
      <path d={ways === 'all' ? ACROSS + UP_AND_DOWN : ACROSS} />
    </g>
  );
}
