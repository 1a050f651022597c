import type { ChooseModel } from '../../state/choose/choose-model';
import type { Zone } from '../../store/saved-position';
import { NudgePad } from './NudgePad';
import type { Board } from './use-board';
import { DEFAULT_ZONE_M, resizedZone } from './zone-size';

/** Where the cue ball should come to rest: put, sized, moved and taken away by buttons. */
export function ZoneTools({ choose, board }: { choose: ChooseModel; board: Board }) {
  const { zone } = choose.open.value;
  return (
    <>
      {zone === null ? (
        <button
          type="button"
          class="button button-primary"
          onClick={() => choose.markZone({ xM: 0, yM: 0, radiusM: DEFAULT_ZONE_M })}
        >
          Put a zone in the middle
        </button>
      ) : (
        <ZoneSize choose={choose} zone={zone} />
      )}
      <NudgePad choose={choose} board={board} mode="zone" what="zone" />
    </>
  );
}

function ZoneSize({ choose, zone }: { choose: ChooseModel; zone: Zone }) {
  return (
    <div class="side-buttons">
      <button type="button" class="button" onClick={() => choose.markZone(resizedZone(zone, -1))}>
        Smaller
      </button>
      <button type="button" class="button" onClick={() => choose.markZone(resizedZone(zone, 1))}>
        Larger
      </button>
      <button type="button" class="button" onClick={() => choose.markZone(null)}>
        No zone
      </button>
    </div>
  );
}
