import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { SavedPosition } from '../../store/saved-position';
import { joinRows } from '../../store/tabs/join-rows';

/** What can be taken back of a position. */
export type Layout = Pick<SavedPosition, 'lengthM' | 'widthM' | 'balls' | 'goal' | 'zone'>;

export function layoutOf({ lengthM, widthM, balls, goal, zone }: SavedPosition): Layout {
  return { lengthM, widthM, balls, goal, zone };
}

/** Changes of positions that can be taken back and made again, of each position its own. */
export interface LayoutHistory {
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Says how the open position was before a change; what was taken back cannot come again. */
  note(before: Layout): void;
  /** How it was before the last change; null where there was none. */
  undo(now: Layout): Layout | null;
  /** How it was before the last undo; null where there was none. */
  redo(now: Layout): Layout | null;
  /** What another tab did to a position is none of these changes: it stays through all of them. */
  hear(id: string, was: Layout, now: Layout): void;
}

interface Steps {
  readonly past: readonly Layout[];
  readonly future: readonly Layout[];
}

/** More than anybody takes back; keeps an evening of changes from growing without bound. */
const MAX_STEPS = 200;
const NO_STEPS: Steps = { past: [], future: [] };

/** Kept while the app is open. */
export function createLayoutHistory(openId: ReadonlySignal<string>): LayoutHistory {
  const all = signal<ReadonlyMap<string, Steps>>(new Map());
  const steps = computed(() => all.value.get(openId.value) ?? NO_STEPS);
  const set = (next: Steps) => {
    all.value = new Map([...all.peek(), [openId.peek(), next]]);
  };
  return {
    canUndo: computed(() => steps.value.past.length > 0),
    canRedo: computed(() => steps.value.future.length > 0),
    hear(id, was, now) {
      const mine = all.peek().get(id);
      if (!mine) return;
      const taken = (layouts: readonly Layout[]) =>
        layouts.map((layout) => joinRows(was, now, layout).row);
      const heard = { past: taken(mine.past), future: taken(mine.future) };
      all.value = new Map([...all.peek(), [id, heard]]);
    },
    note(before) {
      set({ past: [...steps.peek().past.slice(1 - MAX_STEPS), before], future: [] });
    },
    undo(now) {
      const { past, future } = steps.peek();
      const before = past.at(-1) ?? null;
      if (before !== null) set({ past: past.slice(0, -1), future: [...future, now] });
      return before;
    },
    redo(now) {
      const { past, future } = steps.peek();
      const after = future.at(-1) ?? null;
      if (after !== null) set({ past: [...past, now], future: future.slice(0, -1) });
      return after;
    },
  };
}
