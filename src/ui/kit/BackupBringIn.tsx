import { useRef } from 'preact/hooks';
import type { Models } from '../app-models';
import { BackupPlan } from './BackupPlan';
import { incomingWords } from './backup-words';

/** Takes a file in: first what it would do, then, if the person agrees, the doing. */
export function BackupBringIn({ app }: { app: Models<'nowMs' | 'backup'> }) {
  const { into, keeps } = app.backup;
  const input = useRef<HTMLInputElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const incoming = into.incoming.value;
  return (
    <section class="backup-part" aria-labelledby="backup-in">
      <h2 id="backup-in">Bring one back</h2>
      {keeps ? (
        <>
          <p>You see what a file would do before anything is done.</p>
          {/* No kinds of file are asked for: some phones then grey out the very file. */}
          <input
            ref={input}
            type="file"
            hidden
            onChange={({ currentTarget }) => {
              const [file] = currentTarget.files ?? [];
              if (file) void into.pick(file);
              // Else the same file could not be picked again.
              currentTarget.value = '';
            }}
          />
          <button
            ref={button}
            type="button"
            class="button backup-pick"
            disabled={incoming.kind === 'working'}
            onClick={() => input.current?.click()}
          >
            Bring a backup in…
          </button>
        </>
      ) : (
        <p>This browser keeps nothing here, so a backup cannot be brought in.</p>
      )}
      <output class="place-problem">{incomingWords(incoming, app.nowMs())}</output>
      {incoming.kind === 'planned' && (
        <BackupPlan
          app={app}
          planned={incoming}
          onLeave={() => {
            into.leave();
            button.current?.focus();
          }}
        />
      )}
    </section>
  );
}
