import type { ShelfName } from '../../store/records';
import type { AppModels } from '../app-models';
import { SHELF_LABELS } from '../kit/shelf-words';
import './KitStrip.css';

/** What the shot is played with, in one line; a tap goes to Kit. */
export function KitStrip({ app: { kit, router } }: { app: AppModels }) {
  const { cues, cloths, tables } = kit.current;
  return (
    <button type="button" class="kit-strip" onClick={() => router.goTo('kit')}>
      <span class="kit-strip-names">
        <b>{cues.value.name}</b> · {cloths.value.name} · {tables.value.name}
      </span>{' '}
      <DefaultsFlag defaults={kit.defaults.value} />
    </button>
  );
}

/** Says what of the kit in play is nobody's own, until nothing is. */
function DefaultsFlag({ defaults }: { defaults: readonly ShelfName[] }) {
  if (defaults.length === 0) return null;
  const words = defaults.includes('cues')
    ? 'Defaults: not your cue yet.'
    : `Still defaults: ${defaults.map((shelf) => SHELF_LABELS[shelf].toLowerCase()).join(', ')}.`;
  return <span class="kit-strip-flag">{words}</span>;
}
