import { type BringingIn, type BringingInPorts, createBringingIn } from './backup/bringing-in';
import { createSavingOut, type SavingOut, type SavingOutPorts } from './backup/saving-out';
import { createUndoing, type Undoing } from './backup/undoing';

/** A copy of everything, to keep elsewhere and to bring back. */
export interface BackupModel {
  /** False where nothing outlives this visit: then there is nowhere to bring a backup in to. */
  readonly keeps: boolean;
  readonly out: SavingOut;
  readonly into: BringingIn;
  readonly undoing: Undoing;
}

export type BackupPorts = SavingOutPorts & BringingInPorts;

export function createBackupModel(ports: BackupPorts): BackupModel {
  return {
    keeps: ports.gate.store.keeps,
    out: createSavingOut(ports),
    into: createBringingIn(ports),
    undoing: createUndoing(ports),
  };
}
