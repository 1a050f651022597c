import { type ReadonlySignal, signal } from '@preact/signals';
import { type Backup, parseBackup } from '../../store/backup/parse-backup';
import { planImport } from '../../store/backup/plan-import';
import { writeBackup } from '../../store/backup/write-backup';
import type { NotedText } from '../../store/noted-text';
import type { Loaded, StorePort } from '../../store/store-port';
import type { BringingIn } from './bringing-in';
import type { CopyPlaces } from './copy-places';
import { isOwn } from './own-contents';
import type { SaveGate } from './save-gate';
import { withinRoom } from './within-room';

/** How long after a change the copy is renewed, ms. */
const RENEW_MS = 1500;

/** A copy on offer: of what is gone, or of what cannot be opened now. */
export interface CopyOffer {
  readonly kind: 'lost' | 'shut';
  readonly savedAtMs: number;
}

/** When the copy was made, and how many rows do not fit into it. */
export interface CopyMade {
  readonly atMs: number;
  readonly leftOut: number;
}

/**
 * A second copy of the kit and the readings, in the browser's other storage: it is there where the
 * database breaks down, or comes back empty.
 */
export interface SecondCopy {
  /** Null before it was. */
  readonly made: ReadonlySignal<CopyMade | null>;
  /** Whether there was no room for it at the last change; an older one may lie there still. */
  readonly hasNoRoom: ReadonlySignal<boolean>;
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
  readonly places: CopyPlaces;
  readonly into: Pick<BringingIn, 'pick' | 'setMode'>;
  readonly now: () => number;
  readonly reload: () => void;
}

export function createSecondCopy(ports: SecondCopyPorts): SecondCopy {
  const { gate, into, now, reload } = ports;
  const { copy, lost, wanted } = ports.places;
  const { store, answered } = gate;
  const made = signal<CopyMade | null>(null);
  const hasNoRoom = signal(false);
  const offer = signal<CopyOffer | null>(null);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isLeft = false;
  let isForgotten = false;

  const renew = async () => {
    const read = await store.readAll();
    if (!read.ok) return;
    const { contents, leftOut } = withinRoom(read.contents);
    const atMs = now();
    const text = await writeBackup(contents, atMs, null);
    if (isForgotten) return;
    hasNoRoom.value = isLeft || !copy.set(text);
    if (!hasNoRoom.peek()) made.value = { atMs, leftOut };
  };
  const keep = async () => {
    wanted.set(null);
    const found = await findOwn(store, copy);
    // Without room to set the lost copy aside, it is not written over.
    if (found && !found.isOwnHere) isLeft = !lost.set(copy.get());
    await show(lost, 'lost');
    if (!offer.peek()) lost.set(null);
    answered.subscribe(() => {
      clearTimeout(timer);
      timer = setTimeout(renew, RENEW_MS);
    });
  };
  const show = async (text: NotedText, kind: CopyOffer['kind']) => {
    const found = await findOwn(store, text);
    offer.value = found && { kind, savedAtMs: found.backup.savedAtMs };
  };
  if (store.keeps) void keep();
  else if (wanted.get() === null) void show(copy, 'shut');

  return {
    made,
    hasNoRoom,
    offer,
    async take() {
      if (!store.keeps) {
        wanted.set('1');
        reload();
        return;
      }
      const read = await store.readAll();
      // Where there is nothing yet, what was in play comes back as well.
      into.setMode(read.ok && isOwn(read.contents) ? 'merge' : 'replace');
      await into.pick(new File([lost.get() ?? ''], 'The copy in this browser'));
    },
    giveUp() {
      lost.set(null);
      offer.value = null;
    },
    forget() {
      isForgotten = true;
      copy.set(null);
    },
  };
}

/** Loads anew from the copy; what was loaded stands where there is none. */
export async function runFromCopy(
  store: StorePort,
  loaded: Loaded,
  { copy }: CopyPlaces,
): Promise<Loaded> {
  const backup = await read(copy);
  const found = backup && (await compare(store, backup));
  if (!found) return loaded;
  const { desk } = found.backup.contents;
  await store.importBackup({ ...found.plan, toPut: { ...found.plan.toPut, desk } });
  return await store.loadAll();
}

/** What a copy holds; null where it cannot be read. */
async function read(copy: NotedText): Promise<Backup | null> {
  const parsed = await parseBackup(copy.get() ?? '', null);
  return parsed.ok ? parsed.backup : null;
}

/** A copy beside what is here; null where that cannot be read. */
async function compare(store: StorePort, backup: Backup) {
  const here = await store.readAll();
  if (!here.ok) return null;
  const plan = planImport(here.contents, backup, 'merge');
  const isMore = Object.values(plan.changes).some(({ added, changed }) => added[0] ?? changed[0]);
  return { backup, plan, isMore, isOwnHere: isOwn(here.contents) };
}

/** The same, where it holds something of the person's own and something that is not here. */
async function findOwn(store: StorePort, copy: NotedText) {
  const backup = await read(copy);
  // Every start comes by here: invented examples alone are not worth reading all there is.
  const found = backup && isOwn(backup.contents) ? await compare(store, backup) : null;
  return found?.isMore ? found : null;
}
