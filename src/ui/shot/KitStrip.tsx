import type { ShelfName } from '../../store/records';
import type { Models } from '../app-models';
import { HelpLinks } from '../HelpLinks';
import { shelfList } from '../kit/shelf-labels';
import type { Router } from '../route';
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
        onClick={() => (laid ? router.goTo('choose') : router.visit('kit', ''))}
      >
        <span>
          <b>{laid ? `${laid.ball} into ${laid.pocket.replace('-', ' ')}` : cues.value.name}</b>
          {laid ? (
            ', as laid'
          ) : (
            <span class="kit-strip-others">
              {'\u00a0· '}
              {cloths.value.name}
              {'\u00a0· '}
              {tables.value.name}
            </span>
          )}
        </span>
      </button>
      {measure.isSettled.value && <DefaultsFlag defaults={defaults} router={router} />}
      <HelpLinks app={app} />
    </div>
  );
}

/** Says what of the kit in play is nobody's own, until nothing is, and leads to measuring it. */
function DefaultsFlag({ defaults, router }: { defaults: readonly ShelfName[]; router: Router }) {
  if (defaults.length === 0) return null;
  const words = defaults.includes('cues')
    ? 'Not your cue yet.'
    : `Still defaults: ${shelfList(defaults)}.`;
  return (
    <button type="button" class="kit-strip-flag" onClick={() => router.visit('kit', 'measure')}>
      {words} <b>Measure it</b>
    </button>
  );
}
