import type { ChooseModel } from '../../state/choose/choose-model';
import { DEFAULT_ZONE_M, resizedZone } from './zone-size';

/** Where the cue ball should come to rest: put, sized and taken away by buttons. */
export function ZoneTools({ choose }: { choose: ChooseModel }) {
  const { zone } = choose.open.value;
  if (zone === null) {
    return (
      <button
        type="button"
        class="button button-primary"
        onClick={() => choose.markZone({ xM: 0, yM: 0, radiusM: DEFAULT_ZONE_M })}
      >
        Put a zone in the middle
      </button>
    );
  }
  return (
    <div class="zone-buttons">
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
