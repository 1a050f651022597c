import { type ReadonlySignal, signal } from '@preact/signals';
import { type DropOutcome, NOT_DROPPED } from '../offline/drop-stored-app';
import type { NotedText } from '../store/noted-text';

/** Fetches the app anew from the network, for when its stored copy is at fault. */
export interface RepairModel {
  readonly isWorking: ReadonlySignal<boolean>;
  /** Why it was not done; empty where nothing is amiss. */
  readonly problem: ReadonlySignal<string>;
  /** When it was done just before this page was loaded, ms since 1970; null where it was not. */
  readonly doneAtMs: number | null;
  /** Leaves what the player keeps alone, and does nothing without a server. */
  repair(): Promise<void>;
}

export interface RepairPorts {
  drop(): Promise<DropOutcome>;
  /** Saves what is not saved yet; its failure does not stop the repair. */
  flush(): Promise<unknown>;
  reload(): void;
  /** Tells the page that comes next; it has to outlive a reload, and no more. */
  readonly done: NotedText;
  now(): number;
}

export function createRepairModel(ports: RepairPorts): RepairModel {
  const { drop, flush, reload, done, now } = ports;
  const noted = Number(done.get() ?? Number.NaN);
  done.set(null);
  const isWorking = signal(false);
  const problem = signal('');
  return {
    isWorking,
    problem,
    doneAtMs: Number.isFinite(noted) ? noted : null,
    async repair() {
      if (isWorking.peek()) return;
      isWorking.value = true;
      problem.value = '';
      await Promise.allSettled([flush()]);
      const outcome = await drop();
      if (outcome === 'dropped') {
        done.set(`${now()}`);
        return reload();
      }
      problem.value = NOT_DROPPED[outcome];
      isWorking.value = false;
    },
  };
}
