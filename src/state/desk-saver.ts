import { type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../store/records';
import type { StorePort } from '../store/store-port';

/** How long a change may wait for the ones that follow it, ms. Later changes do not extend it. */
const SAVE_DELAY_MS = 250;

/** Does work once no finger is down, only the last asked for, unless called off by what it returns. */
export type OnceUp = (work: () => void) => () => void;

export type SaveState = 'saved' | 'pending' | 'failed';

/** Saves the desk soon after it changes, never under a finger, and at once when asked. */
export interface DeskSaver {
  readonly state: ReadonlySignal<SaveState>;
  noteChange(): void;
  flush(): Promise<void>;
  /** Notes the desk at once as well, for the save may not finish. */
  saveBeforeHiding(): void;
}

export function createDeskSaver(
  store: Pick<StorePort, 'saveDesk' | 'draftDesk'>,
  readDesk: () => Desk,
  onceUp: OnceUp,
): DeskSaver {
  const state = signal<SaveState>('saved');
  let isDue = false;
  let callOff = () => {};
  let changes = 0;
  let saving: Promise<void> = Promise.resolve();

  const save = (): Promise<void> => {
    callOff();
    isDue = false;
    const saved = changes;
    saving = store.saveDesk(readDesk()).then((result) => {
      // A change made meanwhile has a save of its own to wait for.
      if (saved === changes) state.value = result.ok ? 'saved' : 'failed';
    });
    return saving;
  };

  const saveSoon = () => {
    const timer = setTimeout(() => {
      callOff = onceUp(() => void save());
    }, SAVE_DELAY_MS);
    return () => clearTimeout(timer);
  };

  return {
    state,
    noteChange() {
      changes += 1;
      state.value = 'pending';
      if (!isDue) callOff = saveSoon();
      isDue = true;
    },
    flush: () => (isDue || state.peek() === 'failed' ? save() : saving),
    saveBeforeHiding() {
      if (state.peek() === 'saved') return;
      store.draftDesk(readDesk());
      void save();
    },
  };
}
