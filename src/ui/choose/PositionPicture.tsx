import { layOutPicture } from '../../diagram/table-picture';
import type { SavedPosition } from '../../store/saved-position';

const WIDE = 92;
const HIGH = 52;

/** How a position lies, and what is played there; its name and note say the rest. */
export function PositionPicture({ position }: { position: SavedPosition }) {
  const { frame, bed, holes, balls, path } = layOutPicture(position, {
    widthPx: WIDE,
    heightPx: HIGH,
  });
  return (
    <svg class="position-picture" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
      <rect class="table-rail picture-rail" {...frame} rx={2} />
      <rect class="board-bed" {...bed} />
      {holes.map((hole) => (
        <circle key={`${hole.cx} ${hole.cy}`} class="picture-hole" {...hole} />
      ))}
      <path class="picture-path" d={path} />
      {balls.map(({ isCue, ...ball }) => (
        <circle
          key={`${ball.cx} ${ball.cy}`}
          class={isCue ? 'picture-ball is-cue' : 'picture-ball'}
          {...ball}
        />
      ))}
    </svg>
  );
}
