import { type ReadonlySignal, signal } from '@preact/signals';
import type { Desk } from '../store/records';
import type { StorePort } from '../store/store-port';

/** How long a change may wait for the ones that follow it, ms. Later changes do not extend it. */
const SAVE_DELAY_MS = 250;

export type SaveState = 'saved' | 'pending' | 'failed';

/** Saves the desk soon after it changes, and at once when asked. */
export interface DeskSaver {
  readonly state: ReadonlySignal<SaveState>;
  noteChange(): void;
  /** While held, changes wait; hiding the page or {@link flush} saves them all the same. */
  hold(isHeld: boolean): void;
  flush(): Promise<void>;
  /** Notes the desk at once as well, for the save may not finish. */
  saveBeforeHiding(): void;
}

export function createDeskSaver(
  store: Pick<StorePort, 'saveDesk' | 'draftDesk'>,
  readDesk: () => Desk,
): DeskSaver {
  const state = signal<SaveState>('saved');
  let timer: ReturnType<typeof setTimeout> | null = null;
  let changes = 0;
  let isHeld = false;
  let saving: Promise<void> = Promise.resolve();

  let asked = 0;
  const isWaiting = () => asked !== changes;
  const save = (): Promise<void> => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    const saved = changes;
    asked = changes;
    saving = store.saveDesk(readDesk()).then((result) => {
      // A change made meanwhile has a save of its own to wait for.
      if (saved === changes) state.value = result.ok ? 'saved' : 'failed';
    });
    return saving;
  };

  return {
    state,
    noteChange() {
      changes += 1;
      state.value = 'pending';
      if (!isHeld) timer ??= setTimeout(save, SAVE_DELAY_MS);
    },
    hold(isNowHeld) {
      isHeld = isNowHeld;
      if (timer !== null) clearTimeout(timer);
      timer = !isHeld && isWaiting() ? setTimeout(save, SAVE_DELAY_MS) : null;
    },
    flush: () => (isWaiting() || state.peek() === 'failed' ? save() : saving),
    saveBeforeHiding() {
      if (state.peek() === 'saved') return;
      store.draftDesk(readDesk());
      void save();
    },
  };
}
