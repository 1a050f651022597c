import type { StoreName } from './contents';
import type { StoreNotice, StoreNoticeKind } from './store-port';

/** Where storage notices are put up, for listeners that may come later. */
export interface NoticeBoard {
  /** @param unsaved where what is not kept yet belongs */
  raise(kind: StoreNoticeKind, unsaved?: readonly StoreName[]): void;
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
    raise(kind, unsaved = []) {
      const notice = { kind, unsaved };
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
