import { type ReadonlySignal, signal } from '@preact/signals';
import type { Digest } from '../../store/backup/backup-format';
import { type Backup, parseBackup } from '../../store/backup/parse-backup';
import { planImport } from '../../store/backup/plan-import';
import { writeBackup } from '../../store/backup/write-backup';
import type { DraftStorage } from '../../store/desk-draft';
import { SHELF_NAMES } from '../../store/shelf-names';
import type { Contents, Loaded, StorePort } from '../../store/store-port';
import type { BringingIn } from './bringing-in';
import type { SaveGate } from './save-gate';
import { withinRoom } from './within-room';

const COPY = 'leeway.copy';
/** A copy whose original is gone: it stays until it was brought back or given up. */
const LOST = 'leeway.lost-copy';
/** Says that this visit, which cannot open the database, is to run from the copy. */
const WANTED = 'leeway.run-from-copy';

/** How long after a change the copy is renewed, ms. */
const RENEW_MS = 1500;

/** A copy on offer: of what is gone, or of what cannot be opened now. */
export interface CopyOffer {
  readonly kind: 'lost' | 'shut';
  readonly savedAtMs: number;
}

/**
 * A second copy of the kit and the readings, in the browser's other storage: it is there where the
 * database breaks down, or comes back empty.
 */
export interface SecondCopy {
  /** When it was made, and how much does not fit into it; null before it was. */
  readonly made: ReadonlySignal<{ readonly atMs: number; readonly leftOut: number } | null>;
  readonly offer: ReadonlySignal<CopyOffer | null>;
  /** Shows what bringing it back would do, or runs this visit from it where nothing can be kept. */
  take(): Promise<void>;
  /** Gives up the copy of what is gone. */
  giveUp(): void;
  /** What is kept is exchanged for something else: no loss, whatever is missing afterwards. */
  forget(): void;
}

export interface SecondCopyPorts {
  readonly gate: Pick<SaveGate, 'store' | 'answered'>;
  /** Either may throw or give null. */
  readonly findStorage: () => DraftStorage | null;
  /** Lasts as long as the visit. */
  readonly findVisit: () => DraftStorage | null;
  readonly digest: Digest | null;
  readonly into: Pick<BringingIn, 'pick' | 'setMode'>;
  readonly now: () => number;
  readonly reload: () => void;
}

export function createSecondCopy(ports: SecondCopyPorts): SecondCopy {
  const { gate, into, digest, now } = ports;
  const [storage, visit] = [guarded(ports.findStorage), guarded(ports.findVisit)];
  const made = signal<{ readonly atMs: number; readonly leftOut: number } | null>(null);
  const offer = signal<CopyOffer | null>(null);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isLeft = false;

  const renew = async () => {
    const read = await gate.store.readAll();
    if (!read.ok || isLeft) return;
    const { contents, leftOut } = withinRoom(read.contents);
    const atMs = now();
    const text = await writeBackup(contents, atMs, null);
    if (!isLeft && storage.set(COPY, text)) made.value = { atMs, leftOut };
  };
  const keep = async () => {
    await noticeLoss(gate.store, storage);
    offer.value = await findOffer(gate.store, storage, LOST, 'lost');
    gate.answered.subscribe(() => {
      clearTimeout(timer);
      timer = setTimeout(renew, RENEW_MS);
    });
  };
  const offerShut = async () => {
    if (visit.get(WANTED) === null)
      offer.value = await findOffer(gate.store, storage, COPY, 'shut');
  };
  if (gate.store.keeps) visit.set(WANTED, null);
  void (gate.store.keeps ? keep() : offerShut());

  return {
    made,
    offer,
    async take() {
      if (offer.peek()?.kind === 'shut') {
        visit.set(WANTED, '1');
        ports.reload();
        return;
      }
      const read = await gate.store.readAll();
      // Where there is nothing yet, what was in play comes back as well.
      into.setMode(read.ok && isOwn(read.contents) ? 'merge' : 'replace');
      await into.pick(new File([storage.get(LOST) ?? ''], 'The copy in this browser'));
    },
    giveUp() {
      storage.set(LOST, null);
      offer.value = null;
    },
    forget() {
      isLeft = true;
      storage.set(COPY, null);
    },
  };

  async function noticeLoss(store: StorePort, from: Guarded): Promise<void> {
    const text = from.get(COPY);
    const [copy, read] = [await parsed(text), await store.readAll()];
    if (!copy || !read.ok || !isOwn(copy.contents) || isOwn(read.contents)) return;
    if (!from.set(LOST, text)) isLeft = true;
  }

  async function parsed(text: string | null): Promise<Backup | null> {
    const result = text === null ? null : await parseBackup(text, digest);
    return result?.ok ? result.backup : null;
  }

  async function findOffer(
    store: StorePort,
    from: Guarded,
    key: string,
    kind: CopyOffer['kind'],
  ): Promise<CopyOffer | null> {
    const [copy, read] = [await parsed(from.get(key)), await store.readAll()];
    if (!copy || !read.ok || !isOwn(copy.contents)) return null;
    const { changes } = planImport(read.contents, copy, 'merge');
    const isNew = Object.values(changes).some(
      ({ added, changed }) => added.length + changed.length,
    );
    if (isNew) return { kind, savedAtMs: copy.savedAtMs };
    from.set(LOST, null);
    return null;
  }
}

/** Runs this visit from the copy, where that was asked for and nothing else can be had. */
export async function runFromCopy(
  store: StorePort,
  loaded: Loaded,
  findStorage: () => DraftStorage | null,
  findVisit: () => DraftStorage | null,
): Promise<Loaded> {
  const text = guarded(findStorage).get(COPY);
  if (store.keeps || text === null || guarded(findVisit).get(WANTED) === null) return loaded;
  const [copy, read] = [await parseBackup(text, null), await store.readAll()];
  if (!copy.ok || !read.ok) return loaded;
  const plan = planImport(read.contents, copy.backup, 'merge');
  const { desk } = copy.backup.contents;
  await store.importBackup({ ...plan, toPut: { ...plan.toPut, desk } });
  return await store.loadAll();
}

/** Whether anything in it is the person's own doing. */
function isOwn({ attempts, shelves }: Contents): boolean {
  if (attempts.length > 0) return true;
  return SHELF_NAMES.some((shelf) => shelves[shelf].some(({ origin }) => origin === 'by-hand'));
}

interface Guarded {
  get(key: string): string | null;
  /** Null removes it; false where it did not work. */
  set(key: string, text: string | null): boolean;
}

/** Storage that is full or forbidden is the same here as storage that is not there. */
function guarded(find: () => DraftStorage | null): Guarded {
  return {
    get(key) {
      try {
        return find()?.getItem(key) ?? null;
      } catch {
        return null;
      }
    },
    set(key, text) {
      try {
        const storage = find();
        if (text === null) storage?.removeItem(key);
        else storage?.setItem(key, text);
        return storage !== null;
      } catch {
        return false;
      }
    },
  };
}
