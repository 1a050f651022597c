import type { ShelfName, Shelves } from '../../store/records';
import type { LaterModels } from '../app-models';
import { NameField } from './NameField';

interface Props {
  readonly app: LaterModels<'kit'>;
  readonly shelf: ShelfName;
  readonly record: Shelves[ShelfName];
  readonly label?: string;
}

/** A record's name, to type. */
export function RecordName({ app, shelf, record: { id, name }, label }: Props) {
  return (
    <NameField label={label} onRename={(next) => app.kit.rename(shelf, id, next)}>
      {(field, rename) => (
        <input
          {...field}
          type="text"
          autocomplete="off"
          value={name}
          onChange={(event) => rename(event.currentTarget.value)}
        />
      )}
    </NameField>
  );
}
