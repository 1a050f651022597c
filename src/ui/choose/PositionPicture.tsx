import { layOutPicture } from '../../diagram/table-picture';
import type { SavedPosition } from '../../store/saved-position';
import { SmallTable } from './SmallTable';

const WIDE = 92;
const HIGH = 52;

/** How a position lies, and what is played there; its name and note say the rest. */
export function PositionPicture({ position }: { position: SavedPosition }) {
  const view = layOutPicture(position, { widthPx: WIDE, heightPx: HIGH });
  return (
    <svg class="position-picture" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
      <SmallTable view={view}>
        <path class="picture-path" d={view.path} />
      </SmallTable>
    </svg>
  );
}
