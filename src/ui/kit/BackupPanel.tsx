import { useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Models } from '../app-models';
import { BackupBringIn } from './BackupBringIn';
import { contentWords, exchangeFailureWords, exchangeWords, savedWords } from './backup-words';
import { PanelHeader } from './PanelHeader';
import { copyWords, formerWords, NO_COPY_WORDS, roomWords, setAsideLines } from './storage-words';
import './Backup.css';

/** A copy of everything in one file: to keep elsewhere, and to bring back. */
export function BackupPanel({ app }: { app: Models<'nowMs' | 'backup' | 'router'> }) {
  return (
    <>
      <PanelHeader router={app.router} title="Backup" />
      <BackupUndo app={app} />
      <p class="place-note">
        Everything stays on this device, and nowhere else. A phone may clear what a site keeps: when
        it runs short of room, when the site has not been opened for some weeks, or with the
        browser’s history. So keep a copy elsewhere. It also carries all over to another phone, or
        from the browser to the home screen.
      </p>
      <BackupSave app={app} />
      <BackupBringIn app={app} />
      <BackupStorage app={app} />
    </>
  );
}

/** Says when a backup was brought in, and takes it back. */
function BackupUndo({ app }: { app: Models<'nowMs' | 'backup'> }) {
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

/** Hands everything out as one file, and says what is in it and what became of it. */
function BackupSave({ app }: { app: Models<'backup'> }) {
  const { out } = app.backup;
  useEffect(() => {
    const stop = out.keepReady();
    // Another tab may have written while this one was hidden.
    const whenShown = () => {
      if (document.visibilityState === 'visible') void out.refresh();
    };
    document.addEventListener('visibilitychange', whenShown);
    return () => {
      document.removeEventListener('visibilitychange', whenShown);
      stop();
    };
  }, [out]);
  const counts = out.counts.value;
  const outcome = out.outcome.value;
  return (
    <section class="backup-part" aria-labelledby="backup-out">
      <h2 id="backup-out">Keep a copy</h2>
      <p class="backup-contents">{counts && `In it: ${contentWords(counts)}`}</p>
      <button type="button" class="button button-main" onClick={() => void out.save()}>
        Save a backup
      </button>
      <output class="place-problem">{outcome && savedWords(outcome)}</output>
    </section>
  );
}

/** Where all of it lies, how safe it is there, and what else lies beside it. */
function BackupStorage({ app }: { app: Models<'nowMs' | 'backup'> }) {
  const { storage, copy, out, keeps } = app.backup;
  // What is told here is told anew whenever a backup is made ready.
  useSignalEffect(() => {
    if (out.counts.value) void storage.look();
  });
  const state = storage.state.value;
  if (!state || !keeps) return null;
  const nowMs = app.nowMs();
  return (
    <section class="backup-part backup-storage" aria-labelledby="backup-storage">
      <h2 id="backup-storage">Where it lies</h2>
      <p>{roomWords(state.room)}</p>
      {copy.hasNoRoom.value ? (
        <p>{NO_COPY_WORDS}</p>
      ) : (
        copy.made.value && <p>{copyWords(copy.made.value, nowMs)}</p>
      )}
      {state.setAside.length > 0 && (
        <details>
          <summary class="backup-row">{state.setAside.length} set aside as found</summary>
          <p>They are in every backup you save.</p>
          {setAsideLines(state.setAside).map((line) => (
            <p key={line}>{line}</p>
          ))}
        </details>
      )}
      {state.former.map((former, index) => (
        <button
          key={index}
          type="button"
          class="button"
          onClick={() => void out.saveFormer(former)}
        >
          Save all as {formerWords(former, nowMs)}
        </button>
      ))}
    </section>
  );
}
