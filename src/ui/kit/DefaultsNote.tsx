import type { LaterModels } from '../app-models';
import { shelfList } from './shelf-labels';

/** What of the kit in play is nobody's own yet, neither measured nor put in. */
export function DefaultsNote({ app: { kit, measure } }: { app: LaterModels<'kit' | 'measure'> }) {
  const measured = measure.measured.value;
  const defaults = kit.defaults.value.filter((shelf) => !measured.includes(shelf));
  if (defaults.length === 0) return null;
  return (
    <p class="place-note">
      Still defaults: {shelfList(defaults)}. Measure them, or put your own numbers in.
    </p>
  );
}
