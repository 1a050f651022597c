import type { ShelfName, Shelves } from '../../store/records';
import type { LaterModels } from '../app-models';
import { RecordHistory } from '../measure/RecordHistory';
import { PanelHeader } from './PanelHeader';
import { RecordName } from './RecordName';
import { RecordNumber } from './RecordNumber';
import { effectWords, originWords, SHELF_LABELS } from './shelf-words';

/** One record: its name, and each of its numbers to change by hand. */
export function RecordPanel({
  app,
  shelf,
  id,
}: {
  app: LaterModels<'kit' | 'effects' | 'measure' | 'nowMs' | 'desk' | 'router'>;
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
      <RecordName app={app} shelf={shelf} record={record} />
      <p class="place-note">
        {record.origin === 'invented'
          ? 'An invented example. Change a number and it counts as yours.'
          : `Its numbers are ${originWords(record)}.`}
      </p>
      <p class="place-note">{isInPlay ? effectWords(shelf, app) : 'Not in play.'}</p>
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
      <ul class="number-list">
        {kit.figures(shelf, id).map((figure) => (
          <RecordNumber key={figure.path} app={app} shelf={shelf} id={id} figure={figure} />
        ))}
      </ul>
      <RecordHistory app={app} shelf={shelf} record={record} />
    </>
  );
}
