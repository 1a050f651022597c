import type { EditResult } from '../../state/edit-result';
import type { KitModel } from '../../state/kit-model';
import type { ShelfName, Shelves } from '../../store/records';
import type { LaterModels } from '../app-models';
import { Paged } from '../controls/Paged';
import { useProblem } from '../use-problem';
import { DeletedNews } from './DeletedNews';
import { KitPicture } from './KitPicture';
import { PanelHeader } from './PanelHeader';
import { RecordRow } from './RecordRow';
import { SHELF_LABELS } from './shelf-labels';
import { seenRecord } from './shelf-words';

interface ShelfProps {
  readonly app: LaterModels<'kit' | 'measure' | 'desk' | 'router'>;
  readonly shelf: ShelfName;
  /** The panel that was closed, if any: the list begins where its record is, else the one in play. */
  readonly cameFrom: string;
}

/** All there is of one kind: the one in play, others to choose, copy, change or delete. */
export function ShelfPanel({ app, shelf, cameFrom }: ShelfProps) {
  const [problem, tell] = useProblem();
  const { kit } = app;
  const records: readonly Shelves[ShelfName][] = kit.shelves[shelf].value;
  const inPlay = kit.current[shelf].value.id;
  const place = (id: string) => records.findIndex((record) => record.id === id);
  const closed = place(cameFrom.replace(`${shelf}/`, ''));
  const startAt = closed >= 0 ? closed : place(inPlay);
  return (
    <>
      <PanelHeader router={app.router} title={SHELF_LABELS[shelf]} />
      <p class="place-note">{kit.figures(shelf, inPlay)[0]?.hint}</p>
      <DeletedNews words={deletedWords(kit, shelf)} onPutBack={() => kit.restore()} />
      <output class="place-problem">{problem.value}</output>
      <Paged label={SHELF_LABELS[shelf]} items={records} startAt={startAt}>
        {(shown) => (
          <ul class="record-list">
            {shown.map((record) => (
              <ShelfRow key={record.id} app={app} shelf={shelf} record={record} tell={tell} />
            ))}
          </ul>
        )}
      </Paged>
      <p>{kit.saveProblem.value}</p>
    </>
  );
}

function deletedWords({ lastDeleted, current }: KitModel, shelf: ShelfName): string {
  const deleted = lastDeleted.value;
  if (deleted?.shelf !== shelf) return '';
  const now = deleted.wasInPlay ? ` ${current[shelf].value.name} is in play now.` : '';
  return `${deleted.record.name} is deleted.${now}`;
}

interface RowProps {
  readonly app: LaterModels<'kit' | 'measure' | 'desk' | 'router'>;
  readonly shelf: ShelfName;
  readonly record: Shelves[ShelfName];
  tell(result: EditResult): boolean;
}

function ShelfRow({ app, shelf, record, tell }: RowProps) {
  const { kit, router } = app;
  const { id, name } = record;
  const isInPlay = kit.current[shelf].value.id === id;
  const copy = () => {
    const copied = kit.copy(shelf, id);
    tell(copied);
    if (copied.ok) router.open(`${shelf}/${copied.id}`);
  };
  const numbers = `${shelf}/${id}`;
  const { sketch, figure, caption, also, source } = seenRecord(app, shelf, record);
  return (
    <RecordRow
      name={name}
      picture={<KitPicture sketch={sketch} />}
      figure={[figure, caption]}
      note={[...(isInPlay ? ['in play'] : []), ...(also ? [also] : []), source].join(', ')}
      isChosen={isInPlay}
      onChoose={() => kit.choose(shelf, id)}
      actions={[
        {
          label: 'Numbers',
          spoken: 'Numbers of',
          opens: numbers,
          onTap: () => router.open(numbers),
        },
        { label: 'Copy', onTap: copy },
        { label: 'Share', onTap: () => router.visit('kit', `share/${numbers}`) },
        { label: 'Delete', isGrave: true, onTap: () => tell(kit.remove(shelf, id)) },
      ]}
    />
  );
}
