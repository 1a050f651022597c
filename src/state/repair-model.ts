import { type ReadonlySignal, signal } from '@preact/signals';
import { type DropOutcome, NOT_DROPPED } from '../offline/drop-stored-app';

/** Fetches the app anew from the network, for when its stored copy is at fault. */
export interface RepairModel {
  readonly isWorking: ReadonlySignal<boolean>;
  /** Why it was not done; empty where nothing is amiss. */
  readonly problem: ReadonlySignal<string>;
  /** Leaves what the player keeps alone, and does nothing without a server. */
  repair(): Promise<void>;
}

export interface RepairPorts {
  drop(): Promise<DropOutcome>;
  /** Saves what is not saved yet; its failure does not stop the repair. */
  flush(): Promise<unknown>;
  reload(): void;
}

export function createRepairModel({ drop, flush, reload }: RepairPorts): RepairModel {
  const isWorking = signal(false);
  const problem = signal('');
  return {
    isWorking,
    problem,
    async repair() {
      if (isWorking.peek()) return;
      isWorking.value = true;
      problem.value = '';
      await Promise.allSettled([flush()]);
      const outcome = await drop();
      if (outcome === 'dropped') return reload();
      problem.value = NOT_DROPPED[outcome];
      isWorking.value = false;
    },
  };
}
