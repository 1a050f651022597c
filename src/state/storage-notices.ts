import { type ReadonlySignal, signal } from '@preact/signals';
import type { StoreNotice, StoreNoticeKind, StorePort } from '../store/store-port';

/** How long to wait before what could not be saved is tried again, ms; twice as long each time. */
const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 60_000;

const UNSAVED: readonly StoreNoticeKind[] = ['full', 'write-failed'];

/** What is wrong with the storage just now. */
export interface StorageNotices {
  readonly notices: ReadonlySignal<readonly StoreNotice[]>;
  /** Tries again now what could not be saved. */
  retry(): Promise<void>;
}

export interface NoticePorts {
  readonly store: Pick<StorePort, 'onNotice' | 'saveUnsaved'>;
  /** Has everything saved that is not saved yet. */
  readonly flush: () => Promise<unknown>;
}

/** As long as something is not saved, it is tried again and again, more and more seldom. */
export function createStorageNotices({ store, flush }: NoticePorts): StorageNotices {
  const notices = signal<readonly StoreNotice[]>([]);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitMs = FIRST_WAIT_MS;

  const others = (kind: StoreNoticeKind) => notices.peek().filter((one) => one.kind !== kind);
  const isSaved = () => !notices.peek().some(({ kind }) => UNSAVED.includes(kind));
  const retry = async () => {
    clearTimeout(timer);
    await flush();
    await store.saveUnsaved();
    if (isSaved()) waitMs = FIRST_WAIT_MS;
    else wait();
  };
  const wait = () => {
    clearTimeout(timer);
    timer = setTimeout(retry, waitMs);
    waitMs = Math.min(LONGEST_WAIT_MS, 2 * waitMs);
  };

  store.onNotice(
    (notice) => {
      const isFirst = isSaved();
      notices.value = [...others(notice.kind), notice];
      if (isFirst && !isSaved()) wait();
    },
    (kind) => {
      notices.value = others(kind);
    },
  );
  return { notices, retry };
}
