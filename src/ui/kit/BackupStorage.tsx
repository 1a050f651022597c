import { useSignalEffect } from '@preact/signals';
import type { Models } from '../app-models';
import { copyWords, formerWords, NO_COPY_WORDS, roomWords, setAsideLines } from './storage-words';

/** Where all of it lies, how safe it is there, and what else lies beside it. */
export function BackupStorage({ app }: { app: Models<'nowMs' | 'backup'> }) {
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
