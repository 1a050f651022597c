import { batch, type ReadonlySignal, signal } from '@preact/signals';
import type { SavedPosition } from '../../store/saved-position';
import { joinRows } from '../../store/tabs/join-rows';
import type { ChangeElsewhere } from '../kept-rows';
import type { KeptPositions } from './kept-positions';
import { type Layout, type LayoutHistory, layoutOf } from './layout-history';

/** Changes to the open position, which is then the person's own. */
export interface LayoutEdits {
  /** Kept at once, and one undo; what is the same in every number is no change. */
  change(part: Partial<Layout>): void;
  /** Whether a ball is under the hand. */
  readonly isDragging: ReadonlySignal<boolean>;
  /** On screen alone, until the hand lifts. */
  drag(part: Partial<Layout>): void;
  /** Keeps what was dragged: one undo. */
  endDrag(): void;
  /** Puts everything back to where it was before the drag: no undo, and none taken. */
  cancelDrag(): void;
  undo(): void;
  redo(): void;
  /** Takes in what another tab did to a position. */
  hear(change: ChangeElsewhere<SavedPosition>): void;
}

/** @param open the open position as it lies on the table in play */
export function createLayoutEdits(
  kept: KeptPositions,
  open: ReadonlySignal<SavedPosition>,
  history: LayoutHistory,
  now: () => number,
): LayoutEdits {
  let beforeDrag: SavedPosition | null = null;
  const isDragging = signal(false);

  const changed = (part: Partial<Layout>): SavedPosition => ({
    ...open.peek(),
    ...part,
    origin: 'by-hand',
    changedAtMs: now(),
  });
  const letGo = () => {
    const before = beforeDrag;
    beforeDrag = null;
    isDragging.value = false;
    return before;
  };
  const endDrag = () => {
    const before = letGo();
    if (before === null) return;
    if (isSameLayout(layoutOf(before), layoutOf(open.peek()))) return kept.show(before);
    history.note(layoutOf(before));
    kept.put(open.peek());
  };
  const step = (move: (now: Layout) => Layout | null) => {
    endDrag();
    const layout = move(layoutOf(open.peek()));
    if (layout !== null) kept.put(changed(layout));
  };

  return {
    change(part) {
      endDrag();
      const before = layoutOf(open.peek());
      if (isSameLayout(before, { ...before, ...part })) return;
      history.note(before);
      kept.put(changed(part));
    },
    isDragging,
    drag(part) {
      beforeDrag ??= open.peek();
      batch(() => {
        isDragging.value = true;
        kept.show(changed(part));
      });
    },
    endDrag,
    cancelDrag: () =>
      batch(() => {
        const before = letGo();
        if (before !== null) kept.show(before);
      }),
    undo: () => step(history.undo),
    redo: () => step(history.redo),
    hear(change) {
      const { id, was, row } = change;
      batch(() => {
        if (was && row) {
          history.hear(id, layoutOf(was), layoutOf(row));
          if (beforeDrag?.id === id) beforeDrag = joinRows(was, row, beforeDrag).row;
        }
        kept.hear(change);
      });
    },
  };
}

function isSameLayout(one: Layout, other: Layout): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
