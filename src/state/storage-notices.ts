import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { createRetries } from '../offline/retries';
import type { StoreNotice, StoreNoticeKind, StorePort } from '../store/store-port';

const UNSAVED: readonly StoreNoticeKind[] = ['full', 'write-failed'];

/** What is wrong with the storage just now. */
export interface StorageNotices {
  readonly notices: ReadonlySignal<readonly StoreNotice[]>;
  /**
   * Whether what was told of as not kept has been kept since, with nobody asking just then. It holds
   * until it is seen: what tells of trouble must not go from under the finger that reaches for it.
   */
  readonly isKeptSince: ReadonlySignal<boolean>;
  /** That was seen. */
  dismiss(): void;
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
  const isKeptSince = signal(false);
  let asked = 0;
  const retries = createRetries(() => void again());

  const others = (kind: StoreNoticeKind) => notices.peek().filter((one) => one.kind !== kind);
  const isSaved = () => !notices.peek().some(({ kind }) => UNSAVED.includes(kind));
  const again = async () => {
    retries.callOff();
    await flush();
    await store.saveUnsaved();
    if (isSaved()) retries.startOver();
    else retries.again();
  };

  store.onNotice(
    (notice) => {
      const isFirst = isSaved();
      batch(() => {
        notices.value = [...others(notice.kind), notice];
        if (!isSaved()) isKeptSince.value = false;
      });
      if (isFirst && !isSaved()) retries.again();
    },
    (kind) => {
      batch(() => {
        notices.value = others(kind);
        if (UNSAVED.includes(kind) && isSaved()) isKeptSince.value = asked === 0;
      });
    },
  );
  return {
    notices,
    isKeptSince,
    dismiss() {
      isKeptSince.value = false;
    },
    async retry() {
      asked += 1;
      await again();
      asked -= 1;
    },
  };
}
