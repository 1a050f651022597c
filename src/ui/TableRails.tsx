import type { Point } from '../diagram/canvas';
import type { Rect } from '../diagram/trial-view';
import './TableRails.css';

interface Props {
  /** Rails and bed together, px. */
  readonly frame: Rect;
  readonly diamonds: readonly Point[];
}

/** The rails of a table from above, with their diamonds; the bed is drawn over them. */
export function TableRails({ frame, diamonds }: Props) {
  return (
    <>
      <rect class="table-rail" {...frame} rx={4} />
      {diamonds.map(({ x, y }) => (
        <path key={`${x} ${y}`} class="table-diamond" d={`M${x} ${y - 3}l3 3l-3 3l-3 -3z`} />
      ))}
    </>
  );
}
