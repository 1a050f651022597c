import type { StoreNotice, StoreNoticeKind } from './store-port';

const MESSAGES: Readonly<Record<StoreNoticeKind, string>> = {
  blocked: 'Another Leeway tab is in the way of an update: close it.',
  outdated: 'A newer version of Leeway is open: reload this page.',
  closed: 'The browser closed the storage; it opens again by itself.',
  'not-kept': 'This browser gives no storage here: nothing outlives this visit.',
  'write-failed': 'The last change could not be saved.',
};

/** Where storage notices are put up, for listeners that may come later. */
export interface NoticeBoard {
  raise(kind: StoreNoticeKind): void;
  /** Hears one notice of each kind raised so far, then every new one; returns how to stop. */
  onNotice(listener: (notice: StoreNotice) => void): () => void;
}

export function createNoticeBoard(): NoticeBoard {
  const raised = new Map<StoreNoticeKind, StoreNotice>();
  const listeners = new Set<(notice: StoreNotice) => void>();
  return {
    raise(kind) {
      const notice = { kind, message: MESSAGES[kind] };
      raised.set(kind, notice);
      for (const listener of listeners) listener(notice);
    },
    onNotice(listener) {
      for (const notice of raised.values()) listener(notice);
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
