import type { ShelfName } from '../../store/records';
import type { AppModels } from '../app-models';
import { DeletedNews } from './DeletedNews';

/** Says what was deleted from this shelf, and takes it back. */
export function UndoDelete({ app: { kit }, shelf }: { app: AppModels; shelf: ShelfName }) {
  return <DeletedNews words={deletedWords(kit, shelf)} onPutBack={() => kit.restore()} />;
}

function deletedWords(kit: AppModels['kit'], shelf: ShelfName): string {
  const deleted = kit.lastDeleted.value;
  if (deleted?.shelf !== shelf) return '';
  const now = deleted.wasInPlay ? ` ${kit.current[shelf].value.name} is in play now.` : '';
  return `${deleted.record.name} is deleted.${now}`;
}
