import { useRef } from 'preact/hooks';
import type { ShelfName } from '../../store/records';
import type { AppModels } from '../app-models';
import { CardPanel } from '../cards/CardPanel';
import { DrillPanel } from '../cards/DrillPanel';
import { LinksPanel } from '../links/LinksPanel';
import { SharePanel } from '../links/SharePanel';
import { MeasurePlace } from '../measure/MeasurePlace';
import { PlayerPanel } from '../player/PlayerPanel';
import { PlayersPanel } from '../player/PlayersPanel';
import { useKeptFocus } from '../use-kept-focus';
import { useMedia } from '../use-media';
import { AboutPanel } from './AboutPanel';
import { BackupPanel } from './BackupPanel';
import { KitOverview, KitShelves } from './KitOverview';
import { PreferencesPanel } from './PreferencesPanel';
import { RecordPanel } from './RecordPanel';
import { ShelfPanel } from './ShelfPanel';
import { SHELVES } from './shelf-labels';
import { WordsPanel } from './WordsPanel';
import './KitPlace.css';

/** All but those of Choose. */
type KitPlaceModels = Omit<AppModels, 'choose'>;

/** What do I play with? And how do I like to read it. */
export function KitPlace({ app }: { app: KitPlaceModels }) {
  const { panel } = app.router.route.value;
  const place = useKeptFocus(panel);
  const cameFrom = useFormer(panel);
  const isWide = useMedia(WIDE).value;
  const isAttempt = panel.startsWith('measure/');
  const isBeside = isWide && panel !== '' && !isAttempt;
  const page = <KitPage app={app} cameFrom={cameFrom} />;
  return (
    <main
      ref={place}
      class={`kit-place${isAttempt ? ' is-attempt' : ''}${isBeside ? ' is-beside' : ''}`}
      onKeyDown={(event) => {
        if (event.key === 'Escape') app.router.close();
      }}
    >
      {isBeside && (
        <section class="kit-beside" aria-label="All of the kit">
          <KitShelves app={app} />
        </section>
      )}
      {isAttempt ? page : <div class="kit-page">{page}</div>}
    </main>
  );
}

/** As wide as this, all there is of the kit stands beside what is looked at. */
const WIDE = '(min-width: 700px)';

function KitPage({ app, cameFrom }: { app: KitPlaceModels; cameFrom: string }) {
  const [head = '', id = '', ...rest] = app.router.route.value.panel.split('/');
  const shelf: ShelfName | undefined = SHELVES.find((name) => name === head);
  if (head === 'preferences') return <PreferencesPanel app={app} />;
  if (head === 'measure') return <MeasurePlace app={app} id={id} />;
  if (head === 'players') {
    return id === '' ? (
      <PlayersPanel app={app} cameFrom={cameFrom} />
    ) : (
      <PlayerPanel key={id} app={app} id={id} />
    );
  }
  if (head === 'backup') return <BackupPanel app={app} />;
  if (head === 'link') return <LinksPanel app={app} came={id} />;
  if (head === 'share') return <SharePanel app={app} what={[id, ...rest].join('/')} />;
  if (head === 'card') return <CardPanel app={app} />;
  if (head === 'drill') return <DrillPanel app={app} id={id} />;
  if (head === 'about') return <AboutPanel app={app} />;
  if (head === 'words') return <WordsPanel app={app} />;
  if (!shelf) return <KitOverview app={app} />;
  return id === '' ? (
    <ShelfPanel key={shelf} app={app} shelf={shelf} cameFrom={cameFrom} />
  ) : (
    <RecordPanel key={id} app={app} shelf={shelf} id={id} />
  );
}

/** What something was before it last changed; the same as now while it never has. */
function useFormer<T>(now: T): T {
  const known = useRef({ now, former: now });
  if (known.current.now !== now) known.current = { now, former: known.current.now };
  return known.current.former;
}
