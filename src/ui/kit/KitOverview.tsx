import type { ShelfName } from '../../store/records';
import type { LaterModels } from '../app-models';
import { MeasureRow } from '../measure/MeasureRow';
import { PlayerRow } from '../player/PlayerRow';
import { effectWords, originWords, SHELF_LABELS, SHELVES } from './shelf-words';

/** The cue, cloth, balls and table in play, and the ways to change them. */
export function KitOverview({
  app,
}: {
  app: LaterModels<'player' | 'kit' | 'effects' | 'measure' | 'nowMs' | 'desk' | 'router' | 'news'>;
}) {
  const { kit, router, news } = app;
  return (
    <>
      <h1 class="place-title" tabIndex={-1}>
        Kit
      </h1>
      {kit.isDefault.value && (
        <p class="place-note">
          All of this is a default: invented examples, not your cue yet. Measure it, or copy one and
          put your own numbers in.
        </p>
      )}
      <ul class="shelf-list">
        <li>
          <MeasureRow app={app} />
        </li>
        {SHELVES.map((shelf) => (
          <ShelfRow key={shelf} app={app} shelf={shelf} />
        ))}
        <li>
          <PlayerRow app={app} />
        </li>
      </ul>
      <div class="kit-more">
        <button
          type="button"
          class="button"
          data-opens="preferences"
          onClick={() => router.open('preferences')}
        >
          Units and layout
        </button>
        <button
          type="button"
          class="button"
          data-opens="backup"
          onClick={() => router.open('backup')}
        >
          Backup
        </button>
        <button
          type="button"
          class="button"
          data-opens="about"
          onClick={() => router.open('about')}
        >
          About
        </button>
      </div>
      {news.isReadyOffline.value && <p class="offline-note">Ready offline.</p>}
    </>
  );
}

function ShelfRow({
  app,
  shelf,
}: {
  app: LaterModels<'kit' | 'effects' | 'desk' | 'router'>;
  shelf: ShelfName;
}) {
  const record = app.kit.current[shelf].value;
  return (
    <li>
      <button
        type="button"
        class="shelf-row"
        data-opens={shelf}
        onClick={() => app.router.open(shelf)}
      >
        <span class="shelf-label">{SHELF_LABELS[shelf]}</span> <b>{record.name}</b>{' '}
        <span class="shelf-origin">{originWords(record)}</span>{' '}
        <span class="shelf-effect">{effectWords(shelf, app)}</span>
        <span class="shelf-arrow" aria-hidden="true">
          ›
        </span>
      </button>
    </li>
  );
}
