import { useEffect } from 'preact/hooks';
import type { Models } from '../app-models';
import { exchangeFailureWords, exchangeWords } from './backup-words';

/** Says when a backup was brought in, and takes it back. */
export function BackupUndo({ app }: { app: Models<'nowMs' | 'backup'> }) {
  const { undoing } = app.backup;
  useEffect(() => void undoing.look(), [undoing]);
  const last = undoing.last.value;
  const problem = undoing.problem.value;
  return (
    <>
      <output class="undo-delete">
        {last && (
          <>
            <span class="backup-when">{exchangeWords(last, app.nowMs())}</span>
            <button type="button" class="button" onClick={() => void undoing.undo()}>
              <span aria-hidden="true">{last.wasUndoing ? '↷' : '↶'}</span>{' '}
              {last.wasUndoing ? 'Bring it in again' : 'Undo'}
            </button>
            <span class="place-note">
              All is then as it was before. What came since can be brought back the same way.
            </span>
          </>
        )}
      </output>
      <output class="place-problem">{problem && exchangeFailureWords(problem)}</output>
    </>
  );
}
