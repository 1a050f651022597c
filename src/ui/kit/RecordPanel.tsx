import type { FigureKind } from '../../state/figure-field';
import { tellingsOf } from '../../state/kit-telling';
import type { ShelfName, Shelves } from '../../store/records';
import type { FeltName } from '../../units/felt-figures';
import type { LaterModels } from '../app-models';
import { RecordHistory } from '../measure/RecordHistory';
import { KitPicture } from './KitPicture';
import { PanelHeader } from './PanelHeader';
import { PlayedFigure } from './PlayedFigure';
import { RecordName } from './RecordName';
import { RecordNumber } from './RecordNumber';
import { SHELF_LABELS } from './shelf-labels';
import { seenRecord } from './shelf-words';

/** One record: its name, and each of its numbers to change by hand. */
export function RecordPanel({
  app,
  shelf,
  id,
}: {
  app: LaterModels<'kit' | 'measure' | 'nowMs' | 'desk' | 'router'>;
  shelf: ShelfName;
  id: string;
}) {
  const { kit, router } = app;
  const record: Shelves[ShelfName] | null = kit.find(shelf, id);
  if (!record) {
    return (
      <>
        <PanelHeader router={router} title={SHELF_LABELS[shelf]} />
        <p>This one is no longer here.</p>
      </>
    );
  }
  const isGone = kit.shelves[shelf].value.every((kept) => kept.id !== id);
  const isInPlay = kit.current[shelf].value.id === id;
  return (
    <>
      <PanelHeader router={router} title={`${SHELF_LABELS[shelf]}: ${record.name}`} />
      <div class="record-top">
        <RecordName app={app} shelf={shelf} record={record} />
        <KitPicture sketch={seenRecord(app, shelf, record).sketch} />
      </div>
      <PlayedFigure app={app} shelf={shelf} record={record} />
      {!isInPlay && <p class="place-note">Not in play.</p>}
      {isGone && (
        <p class="place-note">
          It was deleted in another tab. Change it, and you can bring it back.
        </p>
      )}
      {!isInPlay && !isGone && (
        <button type="button" class="button" onClick={() => kit.choose(shelf, id)}>
          Play with this one
        </button>
      )}
      <Numbers app={app} shelf={shelf} record={record} kinds={['felt', 'size']} />
      <details class="engine-numbers">
        <summary>The engine’s numbers</summary>
        <Numbers app={app} shelf={shelf} record={record} kinds={['engine']} />
      </details>
      <RecordHistory app={app} shelf={shelf} record={record} />
    </>
  );
}

interface NumbersProps {
  readonly app: LaterModels<'kit' | 'measure' | 'desk'>;
  readonly shelf: ShelfName;
  readonly record: Shelves[ShelfName];
  readonly kinds: readonly FigureKind[];
}

function Numbers({ app, shelf, record, kinds }: NumbersProps) {
  const { id } = record;
  const figures = app.kit.figures(shelf, id).filter(({ kind }) => kinds.includes(kind));
  const told = tellingsOf(app, shelf, record);
  return (
    <ul class="number-list">
      {figures.map((figure) => (
        <RecordNumber
          key={figure.path}
          app={app}
          shelf={shelf}
          id={id}
          figure={figure}
          told={told[figure.path.replace('felt.', '') as FeltName]?.figure}
        />
      ))}
    </ul>
  );
}
