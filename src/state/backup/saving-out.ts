import { type ReadonlySignal, signal } from '@preact/signals';
import {
  type ShareOutcome,
  type SharePort,
  type ShareWay,
  shareFile,
  type TextFile,
} from '../../sensors/share-file';
import type { Digest } from '../../store/backup/backup-format';
import { exportBackup, writeBackup } from '../../store/backup/write-backup';
import type { FormerCopy, ReadFailure } from '../../store/store-port';
import { backupFile, countRows, type RowCounts } from './backup-file';
import type { SaveGate } from './save-gate';

/** What became of a backup: handed out, or why not. */
export type SaveOutcome = ShareOutcome | { readonly kind: 'failed'; readonly reason: ReadFailure };

/** Everything, as one file for the person to keep elsewhere. */
export interface SavingOut {
  /** What is in the file that is ready; null while none is. */
  readonly counts: ReadonlySignal<RowCounts | null>;
  /** What became of the last one; null before the first. */
  readonly outcome: ReadonlySignal<SaveOutcome | null>;
  /**
   * Keeps a file ready that says what is kept now, for a share sheet opens only where nothing has to
   * be waited for; returns how to stop.
   */
  keepReady(): () => void;
  /** Reads all anew: another tab may have written. */
  refresh(): Promise<void>;
  /** Hands the file out; call it within a tap. */
  save(): Promise<void>;
  /** The same with a copy from before an update or an import. */
  saveFormer(copy: FormerCopy): Promise<void>;
}

export interface SavingOutPorts {
  readonly gate: Pick<SaveGate, 'store' | 'answered'>;
  /** Has saved whatever is not saved yet; resolves when the store has answered. */
  readonly flush: () => Promise<unknown>;
  readonly sharing: SharePort;
  /** Null where the browser gives none. */
  readonly digest: Digest | null;
  /** The time of day, ms since 1970. */
  readonly now: () => number;
}

type Ready =
  | { readonly kind: 'ready'; readonly file: TextFile; readonly counts: RowCounts }
  | { readonly kind: 'failed'; readonly reason: ReadFailure };

export function createSavingOut(ports: SavingOutPorts): SavingOut {
  const { gate, flush, sharing, digest, now } = ports;
  const ready = signal<Ready | null>(null);
  const counts = signal<RowCounts | null>(null);
  const outcome = signal<SaveOutcome | null>(null);
  let way: ShareWay = 'sheet';
  let reads = 0;

  const show = (made: Ready | null) => {
    ready.value = made;
    counts.value = made?.kind === 'ready' ? made.counts : null;
  };
  const read = async (): Promise<Ready> => {
    reads += 1;
    const asked = reads;
    const made = await readyFile(gate, now(), digest);
    // One asked for later knows more.
    if (asked === reads) show(made);
    return made;
  };
  const refresh = async (): Promise<Ready> => {
    await flush();
    return await read();
  };

  const handOut = async (made: Ready) => {
    const became = made.kind === 'ready' ? await shareFile(made.file, sharing, way) : made;
    way = became.kind === 'again' ? became.way : 'sheet';
    outcome.value = became;
  };

  return {
    counts,
    outcome,
    keepReady() {
      let [isOver, stop] = [false, () => {}];
      // What is read before all is saved lacks the last change: a tap just then waits for it.
      void flush().then(() => {
        if (!isOver) stop = gate.answered.subscribe(() => void read());
      });
      return () => {
        isOver = true;
        stop();
        reads += 1;
        show(null);
      };
    },
    async refresh() {
      await refresh();
    },
    async save() {
      const kept = ready.peek();
      await handOut(kept?.kind === 'ready' ? kept : await refresh());
    },
    async saveFormer({ contents, atMs }) {
      const text = await writeBackup(contents, atMs, digest);
      await handOut({ kind: 'ready', file: backupFile(text, atMs), counts: countRows(text) });
    },
  };
}

async function readyFile(
  { store }: Pick<SaveGate, 'store'>,
  savedAtMs: number,
  digest: Digest | null,
): Promise<Ready> {
  const exported = await exportBackup(store, savedAtMs, digest);
  if (!exported.ok) return { kind: 'failed', reason: exported.reason };
  const { text } = exported;
  return { kind: 'ready', file: backupFile(text, savedAtMs), counts: countRows(text) };
}
