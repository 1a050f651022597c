import { useEffect } from 'preact/hooks';
import type { Models } from '../app-models';
import { contentWords, savedWords } from './backup-words';

/** Hands everything out as one file, and says what is in it and what became of it. */
export function BackupSave({ app }: { app: Models<'backup'> }) {
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
