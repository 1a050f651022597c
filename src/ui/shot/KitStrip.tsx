import type { ShelfName } from '../../store/records';
import type { Models } from '../app-models';
import { HelpLinks } from '../HelpLinks';
import { SHELF_LABELS } from '../kit/shelf-labels';
import './KitStrip.css';

/**
 * What the shot is played with, in one line; a tap goes to Kit. Of a shot that was laid on Choose it
 * says which, and leads back there. Beside it the ways to measuring, words and settings.
 */
export function KitStrip({ app }: { app: Models<'shot' | 'kit' | 'measure' | 'router'> }) {
  const { shot, kit, router, measure } = app;
  const laid = shot.laid.value;
  const { cues, cloths, tables } = kit.current;
  const measured = measure.measured.value;
  const defaults = kit.defaults.value.filter((shelf) => !measured.includes(shelf));
  return (
    <div class="kit-strip">
      <button
        type="button"
        class="kit-strip-names"
        onClick={() => router.goTo(laid ? 'choose' : 'kit')}
      >
        <span>
          <b>{laid ? `${laid.ball} into ${laid.pocket.replace('-', ' ')}` : cues.value.name}</b>
          {laid ? (
            ', as laid'
          ) : (
            <span class="kit-strip-others">
              {' '}
              · {cloths.value.name} · {tables.value.name}
            </span>
          )}
        </span>
      </button>
      {measure.isSettled.value && <DefaultsFlag defaults={defaults} />}
      <HelpLinks app={app} />
    </div>
  );
}

/** Says what of the kit in play is nobody's own, until nothing is, and leads to measuring it. */
function DefaultsFlag({ defaults }: { defaults: readonly ShelfName[] }) {
  if (defaults.length === 0) return null;
  const words = defaults.includes('cues')
    ? 'Not your cue yet.'
    : `Still defaults: ${defaults.map((shelf) => SHELF_LABELS[shelf].toLowerCase()).join(', ')}.`;
  return (
    <a class="kit-strip-flag" href="#kit/measure">
      {words} <b>Measure it</b>
    </a>
  );
}
