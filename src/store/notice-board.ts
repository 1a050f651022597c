import type { StoreNotice, StoreNoticeKind } from './store-port';

const MESSAGES: Readonly<Record<StoreNoticeKind, string>> = {
  blocked: 'Another Leeway tab is in the way of an update: close it, then reload.',
  outdated: 'A newer version of Leeway is open: reload this page.',
  deleted:
    'What was kept here was deleted from outside. The next change here keeps all of it again.',
  replaced: 'A backup was brought in in another tab: reload this page.',
  closed: 'The browser closed the storage; it opens again by itself.',
  'not-kept': 'This browser gives no storage here: nothing outlives this visit.',
  'not-opened':
    'What is kept here did not open. Readings wait aside: reload, or close and reopen the browser.',
  full: 'The storage of this browser is full.',
  'write-failed': 'The storage of this browser does not answer.',
  mended: 'Something kept here was damaged. It is set aside as it was found.',
};

/** Where storage notices are put up, for listeners that may come later. */
export interface NoticeBoard {
  /** @param detail what else there is to say of it */
  raise(kind: StoreNoticeKind, detail?: string): void;
  /** These do not hold any more. */
  lower(...kinds: readonly StoreNoticeKind[]): void;
  /** Hears each notice that holds, then every new one, and what is over; returns how to stop. */
  onNotice(
    listener: (notice: StoreNotice) => void,
    onOver?: (kind: StoreNoticeKind) => void,
  ): () => void;
}

export function createNoticeBoard(): NoticeBoard {
  const raised = new Map<StoreNoticeKind, StoreNotice>();
  const heard = new Set<(notice: StoreNotice) => void>();
  const over = new Set<(kind: StoreNoticeKind) => void>();
  return {
    raise(kind, detail) {
      const message = detail === undefined ? MESSAGES[kind] : `${MESSAGES[kind]} ${detail}`;
      const notice = { kind, message };
      raised.set(kind, notice);
      for (const listener of heard) listener(notice);
    },
    lower(...kinds) {
      for (const kind of kinds.filter((one) => raised.delete(one))) {
        for (const listener of over) listener(kind);
      }
    },
    onNotice(listener, onOver = () => {}) {
      for (const notice of raised.values()) listener(notice);
      heard.add(listener);
      over.add(onOver);
      return () => {
        heard.delete(listener);
        over.delete(onOver);
      };
    },
  };
}
