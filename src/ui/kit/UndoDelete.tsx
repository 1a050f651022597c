import type { ShelfName } from '../../store/records';
import type { AppModels } from '../app-models';

/** Says what was deleted from this shelf, and takes it back. */
export function UndoDelete({ app, shelf }: { app: AppModels; shelf: ShelfName }) {
  const deleted = app.kit.lastDeleted.value;
  const isHere = deleted?.shelf === shelf;
  return (
    <output class="undo-delete">
      {isHere && (
        <>
          <span>
            {deleted.record.name} is deleted.
            {deleted.wasInPlay && ` ${app.kit.current[shelf].value.name} is in play now.`}
          </span>
          <button type="button" class="button" onClick={() => app.kit.restore()}>
            <span aria-hidden="true">↶</span> Put it back
          </button>
        </>
      )}
    </output>
  );
}
