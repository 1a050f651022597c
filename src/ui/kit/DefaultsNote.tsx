import type { LaterModels } from '../app-models';
import { SHELVES, shelfList } from './shelf-labels';

/** What of the kit in play is nobody's own yet, neither measured nor put in. */
export function DefaultsNote({ app: { kit, measure } }: { app: LaterModels<'kit' | 'measure'> }) {
  const measured = measure.measured.value;
  const defaults = kit.defaults.value.filter((shelf) => !measured.includes(shelf));
  if (defaults.length === 0 || !measure.isSettled.value) return null;
  return (
    <p class="place-note">
      {defaults.length === SHELVES.length
        ? 'All of this is a default: invented examples, not your cue yet. Measure it'
        : `Still defaults, invented examples: ${shelfList(defaults)}. Measure them`}
      , or copy one and put your own numbers in.
    </p>
  );
}
