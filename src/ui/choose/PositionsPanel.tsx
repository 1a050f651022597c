import type { EditResult } from '../../state/edit-result';
import type { SavedPosition } from '../../store/saved-position';
import type { Models } from '../app-models';
import { Paged } from '../controls/Paged';
import { DeletedNews } from '../kit/DeletedNews';
import { PanelHeader } from '../kit/PanelHeader';
import { RecordRow } from '../kit/RecordRow';
import { useNaming } from './PositionName';
import { PositionPicture } from './PositionPicture';
import './PositionsPanel.css';
import { useProblem } from '../use-problem';

/** Every position kept: open one, begin, copy, name or delete one. */
export function PositionsPanel({ app }: { app: Models<'choose' | 'router'> }) {
  const { choose, router } = app;
  const [problem, tell] = useProblem();
  const deleted = choose.lastDeleted.value;
  const isOther = Boolean(deleted?.drill);
  return (
    <>
      <PanelHeader router={router} title="Positions" />
      <button
        type="button"
        class="button button-primary"
        disabled={choose.crowded.value !== null}
        onClick={() => {
          choose.add();
          router.close();
        }}
      >
        New position
      </button>
      <DeletedNews
        words={deleted && !isOther ? `${deleted.name} is deleted.` : ''}
        onPutBack={() => tell(choose.restore())}
      />
      <output class="place-problem">{problem.value || choose.crowded.value}</output>
      <Paged label="Positions" items={choose.saved.value}>
        {(shown) => (
          <ul class="record-list">
            {shown.map((position) => (
              <PositionRow key={position.id} app={app} position={position} tell={tell} />
            ))}
          </ul>
        )}
      </Paged>
    </>
  );
}

interface RowProps {
  readonly app: Models<'choose' | 'router'>;
  readonly position: SavedPosition;
  tell(result: EditResult): boolean;
}

function PositionRow({ app: { choose, router }, position, tell }: RowProps) {
  const { id, name } = position;
  const isOpen = choose.open.value.id === id;
  const { rename, field } = useNaming(choose, position);
  const open = () => {
    if (tell(choose.openPosition(id))) router.close();
  };
  return (
    <RecordRow
      name={name}
      note={positionNote(position)}
      picture={<PositionPicture position={position} />}
      isChosen={isOpen}
      onChoose={open}
      actions={[
        rename,
        { label: 'Copy', onTap: () => tell(choose.duplicate(id)) },
        { label: 'Share', onTap: () => router.visit('kit', `share/position/${id}`) },
        { label: 'Card', onTap: () => router.visit('kit', `drill/${id}`) },
        { label: 'Delete', isGrave: true, onTap: () => tell(choose.remove(id)) },
      ]}
    >
      {field}
    </RecordRow>
  );
}

function positionNote({ origin, balls }: SavedPosition): string {
  const count = `${balls.length} ${balls.length === 1 ? 'ball' : 'balls'}`;
  return origin === 'invented' ? `an invented example, ${count}` : count;
}
