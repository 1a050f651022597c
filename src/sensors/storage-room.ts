/** What the browser says of the room it gives; null where it does not say. */
export interface RoomGiven {
  /** Whether it promised not to clear it by itself. */
  readonly isPromised: boolean | null;
  readonly usedBytes: number | null;
  readonly mostBytes: number | null;
}

export interface StorageRoom {
  /** Asks, once, that nothing be cleared without the person; call it within a tap. */
  ask(): void;
  look(): Promise<RoomGiven>;
}

/** The part of the browser's StorageManager that is used; some browsers lack any of it. */
export type RoomManager = Partial<Pick<StorageManager, 'persist' | 'persisted' | 'estimate'>>;

/** @param storage missing outside https */
export function createStorageRoom(storage: RoomManager | undefined): StorageRoom {
  let isAsked = false;
  return {
    ask() {
      if (isAsked) return;
      isAsked = true;
      // Never waited for: one browser asks the person first, and may never answer.
      storage?.persist?.().catch(() => {});
    },
    async look() {
      const [isPromised, estimate] = await Promise.all([
        storage?.persisted?.().catch(() => null),
        storage?.estimate?.().catch(() => null),
      ]);
      return {
        isPromised: isPromised ?? null,
        usedBytes: estimate?.usage ?? null,
        mostBytes: estimate?.quota ?? null,
      };
    },
  };
}
