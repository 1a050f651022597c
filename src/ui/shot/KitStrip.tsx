import type { AppModels } from '../app-models';
import './KitStrip.css';

/** What the shot is played with, in one line; a tap goes to Kit. */
export function KitStrip({ app: { kit, router } }: { app: AppModels }) {
  const { cues, cloths, tables } = kit.current;
  return (
    <button type="button" class="kit-strip" onClick={() => router.goTo('kit')}>
      <span class="kit-strip-names">
        <b>{cues.value.name}</b> · {cloths.value.name} · {tables.value.name}
      </span>{' '}
      {kit.isDefault.value && <span class="kit-strip-flag">Defaults: not your cue yet.</span>}
    </button>
  );
}
