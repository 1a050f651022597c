import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { ShelfName, Shelves } from '../../store/records';
import type { Models } from '../app-models';

interface Props {
  readonly app: Models<'kit'>;
  readonly shelf: ShelfName;
  readonly record: Shelves[ShelfName];
}

/** A record's name, to type. A name that cannot be used is told beside it. */
export function RecordName({ app, shelf, record }: Props) {
  const problem = useSignal('');
  const inputId = useId();
  const problemId = useId();
  return (
    <div class="record-name">
      <label for={inputId}>Name</label>
      <input
        id={inputId}
        type="text"
        autocomplete="off"
        value={record.name}
        aria-invalid={problem.value !== ''}
        aria-describedby={problemId}
        onChange={(event) => {
          const renamed = app.kit.rename(shelf, record.id, event.currentTarget.value);
          problem.value = renamed.ok ? '' : renamed.problem;
        }}
      />
      <span class="field-problem" id={problemId}>
        {problem.value}
      </span>
    </div>
  );
}
