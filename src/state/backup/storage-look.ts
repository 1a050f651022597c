import { type ReadonlySignal, signal } from '@preact/signals';
import type { RoomGiven, StorageRoom } from '../../sensors/storage-room';
import type { SetAside } from '../../store/contents';
import type { FormerCopy } from '../../store/store-port';
import type { SaveGate } from './save-gate';

/** Where everything lies, how safe it is there, and what else lies beside it. */
export interface StorageState {
  readonly room: RoomGiven;
  readonly setAside: readonly SetAside[];
  /** The newest first. */
  readonly former: readonly FormerCopy[];
}

export interface StorageLook {
  /** Null before {@link look}. */
  readonly state: ReadonlySignal<StorageState | null>;
  look(): Promise<void>;
}

export interface StorageLookPorts {
  readonly gate: Pick<SaveGate, 'store'>;
  readonly room: Pick<StorageRoom, 'look'>;
}

export function createStorageLook({ gate, room }: StorageLookPorts): StorageLook {
  const state = signal<StorageState | null>(null);
  return {
    state,
    async look() {
      const [given, read, former] = await Promise.all([
        room.look(),
        gate.store.readAll(),
        gate.store.formerCopies(),
      ]);
      state.value = { room: given, setAside: read.ok ? read.contents.setAside : [], former };
    },
  };
}
