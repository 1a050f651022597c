import type { ShelfName } from '../../store/records';
import type { LaterModels } from '../app-models';
import { HelpLinks } from '../HelpLinks';
import { MeasureRow } from '../measure/MeasureRow';
import { PlayerRow } from '../player/PlayerRow';
import { DefaultsNote } from './DefaultsNote';
import { isOpen } from './is-open';
import { BackButton } from './PanelHeader';
import { PictureRow } from './PictureRow';
import { SHELF_LABELS, SHELVES } from './shelf-labels';
import { seenRecord } from './shelf-words';
import './KitLists.css';

const MORE = [
  ['preferences', 'Units and layout'],
  ['backup', 'Backup'],
  ['card', 'Card'],
  ['link', 'Links'],
  ['about', 'About'],
] as const;

interface Props {
  readonly app: LaterModels<'player' | 'kit' | 'measure' | 'nowMs' | 'desk' | 'router' | 'news'>;
}

/** The cue, cloth, balls and table in play, and the ways to change them. */
export function KitOverview({ app }: Props) {
  const { router } = app;
  return (
    <>
      <header class="place-head">
        {router.isVisit.value && <BackButton router={router} />}
        <h1 class="place-title" tabIndex={-1}>
          Kit
        </h1>
        <HelpLinks app={app} />
      </header>
      <DefaultsNote app={app} />
      <KitShelves app={app} />
    </>
  );
}

/** Everything there is of the kit, a row each, and what else can be set; the one that is open stands out. */
export function KitShelves({ app }: Props) {
  const { router, news } = app;
  return (
    <>
      <ul class="shelf-list">
        <MeasureRow app={app} />
        {SHELVES.map((shelf) => (
          <ShelfRow key={shelf} app={app} shelf={shelf} />
        ))}
        <PlayerRow app={app} />
      </ul>
      <div class="kit-more">
        {MORE.map(([panel, label]) => (
          <button
            key={panel}
            type="button"
            class="button"
            data-opens={panel}
            aria-current={isOpen(router, panel)}
            onClick={() => router.open(panel)}
          >
            {label}
          </button>
        ))}
      </div>
      {news.isReadyOffline.value && <p class="offline-note">Ready offline.</p>}
    </>
  );
}

function ShelfRow({
  app,
  shelf,
}: {
  app: LaterModels<'kit' | 'measure' | 'desk' | 'router'>;
  shelf: ShelfName;
}) {
  const record = app.kit.current[shelf].value;
  const { sketch, figure, caption, source } = seenRecord(app, shelf, record);
  return (
    <PictureRow app={app} panel={shelf} sketch={sketch}>
      <span class="shelf-label">
        {SHELF_LABELS[shelf]}
        <span class="shelf-origin">, {source}</span>
      </span>{' '}
      <b>{record.name}</b>{' '}
      <span class="record-figure">
        <strong>{figure}</strong> {caption}
      </span>
    </PictureRow>
  );
}
