import { type BringingIn, type BringingInPorts, createBringingIn } from './backup/bringing-in';
import { createSavingOut, type SavingOut, type SavingOutPorts } from './backup/saving-out';
import { createSecondCopy, type SecondCopy, type SecondCopyPorts } from './backup/second-copy';
import { createStorageLook, type StorageLook, type StorageLookPorts } from './backup/storage-look';
import { createUndoing, type Undoing } from './backup/undoing';

/** A copy of everything, to keep elsewhere and to bring back. */
export interface BackupModel {
  /** False where nothing outlives this visit: then there is nowhere to bring a backup in to. */
  readonly keeps: boolean;
  readonly out: SavingOut;
  readonly into: BringingIn;
  readonly undoing: Undoing;
  readonly copy: SecondCopy;
  readonly storage: StorageLook;
}

export type BackupPorts = SavingOutPorts &
  BringingInPorts &
  StorageLookPorts &
  Omit<SecondCopyPorts, 'into'>;

export function createBackupModel(ports: BackupPorts): BackupModel {
  const { reload } = ports;
  const exchanging = {
    ...ports,
    reload() {
      copy.forget();
      reload();
    },
  };
  const into = createBringingIn(exchanging);
  const copy = createSecondCopy({ ...ports, into });
  return {
    keeps: ports.gate.store.keeps,
    out: createSavingOut(ports),
    into,
    undoing: createUndoing(exchanging),
    copy,
    storage: createStorageLook(ports),
  };
}
