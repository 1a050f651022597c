import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { openFile } from '../../sensors/open-file';
import type { BackupFault, Digest } from '../../store/backup/backup-format';
import { type Backup, parseBackup } from '../../store/backup/parse-backup';
import { planImport } from '../../store/backup/plan-import';
import type { Contents } from '../../store/contents';
import { isTooMany } from '../../store/most-of-a-kind';
import { isSame } from '../../store/same-value';
import type { Failed, ImportPlan, ReadFailure } from '../../store/store-port';
import { type ExchangeFailure, type ExchangePorts, exchange } from './exchange';
import { type MendedField, mendedFields } from './mended-field';
import { isBlank } from './own-contents';
import type { UndoneMark } from './undone-mark';

export type ImportMode = ImportPlan['mode'];

/** Why a file is not looked into: what is wrong with it, or with reading it or what is kept here. */
export type FileFault =
  | BackupFault
  | { readonly reason: 'not-opened' }
  | Pick<Failed<ReadFailure>, 'reason'>;

/** A file picked to be brought in, as far as it has come. */
export type Incoming =
  | { readonly kind: 'none' }
  | { readonly kind: 'reading'; readonly fileName: string }
  | {
      readonly kind: 'refused';
      readonly fileName: string;
      /** The first line that is wrong, counted from 1; null where no line is to blame. */
      readonly line: number | null;
      readonly fault: FileFault;
    }
  | {
      readonly kind: 'planned';
      readonly fileName: string;
      readonly savedAtMs: number;
      readonly plan: ImportPlan;
      /** Whether it can be added to what is here alone. */
      readonly isPart: boolean;
      /** Whether nothing of the person's is here: then it takes the place of what is, unasked. */
      readonly isBlankHere: boolean;
      readonly mended: readonly MendedField[];
      /** Why it cannot be done, or was not when it was asked for; null where nothing is known. */
      readonly problem: ExchangeFailure | 'too-many' | null;
      /** Whether it may be asked for. */
      readonly canBeDone: boolean;
    }
  /** Being done; then the page loads anew. */
  | { readonly kind: 'working'; readonly fileName: string };

/** Bringing a backup in: first a look at what it would do, then the doing. */
export interface BringingIn {
  readonly incoming: ReadonlySignal<Incoming>;
  readonly mode: ReadonlySignal<ImportMode>;
  setMode(mode: ImportMode): void;
  /** Reads a file and works out what it would do; changes nothing. */
  pick(file: Pick<File, 'name' | 'size' | 'text'>): Promise<void>;
  /** Does what is planned, unless that is no longer what was shown. */
  bringIn(): Promise<void>;
  /** Puts the file aside. */
  leave(): void;
}

export interface BringingInPorts extends ExchangePorts {
  /** Null where the browser gives none. */
  readonly digest: Digest | null;
  readonly undone: UndoneMark;
}

interface Picked {
  readonly kind: 'picked';
  readonly fileName: string;
  readonly backup: Backup;
  /** What is kept here, as it was looked at. */
  readonly current: Contents;
  readonly problem: ExchangeFailure | null;
}

type Stage = Exclude<Incoming, { kind: 'planned' }> | Picked;

const CHANGED_MEANWHILE = { ok: false, reason: 'changed-meanwhile' } as const;

export function createBringingIn(ports: BringingInPorts): BringingIn {
  const { gate, undone } = ports;
  const { store } = gate;
  const stage = signal<Stage>({ kind: 'none' });
  const mode = signal<ImportMode>('merge');
  let picks = 0;

  const incoming = computed(() => {
    const now = stage.value;
    return now.kind === 'picked' ? plannedOf(now, mode.value) : now;
  });

  return {
    incoming,
    mode,
    setMode(next) {
      mode.value = next;
    },
    async pick(file) {
      picks += 1;
      const mine = picks;
      stage.value = { kind: 'reading', fileName: file.name };
      const found = await lookInto(file, ports);
      // Another file may have been picked meanwhile, or this one put aside.
      if (mine === picks) stage.value = found;
    },
    async bringIn() {
      const [picked, shown] = [stage.peek(), incoming.peek()];
      if (picked.kind !== 'picked' || shown.kind !== 'planned' || !shown.canBeDone) return;
      const agreed = shown.plan;
      let { current } = picked;
      stage.value = { kind: 'working', fileName: picked.fileName };
      const done = await exchange(ports, async () => {
        const read = await store.readAll();
        if (!read.ok) return read;
        current = read.contents;
        const plan = planOf({ ...picked, current }, agreed.mode);
        if (!isSame(plan.changes, agreed.changes)) return CHANGED_MEANWHILE;
        const result = await store.importBackup(plan);
        if (result.ok) undone.write(null);
        return result;
      });
      if (!done.ok) stage.value = { ...picked, current, problem: done.reason };
    },
    leave() {
      picks += 1;
      stage.value = { kind: 'none' };
    },
  };
}

function planOf({ current, backup }: Picked, mode: ImportMode): ImportPlan {
  return planImport(current, backup, mode);
}

function plannedOf(picked: Picked, asked: ImportMode): Incoming {
  const { fileName, backup, current } = picked;
  const { isPart } = backup;
  const isBlankHere = !isPart && isBlank(current);
  const plan = planOf(picked, isPart ? 'merge' : isBlankHere ? 'replace' : asked);
  const mended = mendedFields(plan.repairs, backup.contents, current.desk.preferences);
  const isMore = isTooMany(plan);
  return {
    kind: 'planned',
    fileName,
    savedAtMs: backup.savedAtMs,
    plan,
    isPart,
    isBlankHere,
    mended,
    problem: isMore ? 'too-many' : picked.problem,
    canBeDone: !isMore,
  };
}

/** What a picked file amounts to beside what is kept here. */
async function lookInto(
  file: Pick<File, 'name' | 'size' | 'text'>,
  { gate, flush, digest }: BringingInPorts,
): Promise<Stage> {
  const refused = (fault: FileFault, line: number | null = null): Stage => ({
    kind: 'refused',
    fileName: file.name,
    line,
    fault,
  });
  const opened = await openFile(file);
  if (opened.kind === 'too-large') return refused({ reason: 'too-large' });
  if (opened.kind === 'unreadable') return refused({ reason: 'not-opened' });
  const parsed = await parseBackup(opened.text, digest);
  if (!parsed.ok) return refused(parsed.fault, parsed.line);
  await flush();
  const read = await gate.store.readAll();
  if (!read.ok) return refused(read);
  const { backup } = parsed;
  return { kind: 'picked', fileName: file.name, backup, current: read.contents, problem: null };
}
