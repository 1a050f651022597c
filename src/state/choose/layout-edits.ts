import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import { isSame } from '../../store/same-value';
import type { SavedPosition } from '../../store/saved-position';
import { createHistory, type Gestures, type History } from '../history';
import type { KeptPositions } from './kept-positions';

/** What can be changed, and taken back, of a position. */
export type Layout = Pick<
  SavedPosition,
  'lengthM' | 'widthM' | 'balls' | 'goal' | 'legal' | 'zone'
>;

/** Changes to the open position, which is then the person's own. Each position has its own history. */
export interface LayoutEdits extends Gestures {
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
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
}

/** @param open the open position as it lies on the table in play */
export function createLayoutEdits(
  kept: KeptPositions,
  open: ReadonlySignal<SavedPosition>,
  now: () => number,
): LayoutEdits {
  /** What is dragged, as it lay on the table in play. */
  let beforeDrag: SavedPosition | null = null;
  const isDragging = signal(false);
  const histories = new Map<string, History<SavedPosition>>();
  const historyOf = (id: string) => {
    const found = histories.get(id) ?? createHistory<SavedPosition>(isSameLayout);
    histories.set(id, found);
    return found;
  };
  const history = computed(() => historyOf(kept.openId.value));

  const ownNow = (position: SavedPosition): SavedPosition => ({
    ...position,
    origin: 'by-hand',
    changedAtMs: now(),
  });
  const make = (part: Partial<Layout>, how: 'put' | 'show') => {
    const before = kept.open.peek();
    const after = ownNow({ ...open.peek(), ...part });
    history.peek().note(before, after);
    kept[how](after);
  };
  const letGo = () => {
    const before = beforeDrag;
    beforeDrag = null;
    isDragging.value = false;
    return before;
  };
  const revertGesture = (how: 'put' | 'show') => {
    const before = history.peek().revertGesture(kept.open.peek());
    if (before) kept[how](before);
  };
  const endDrag = () => {
    const before = letGo();
    if (before === null) return;
    if (isSameLayout(before, open.peek())) return revertGesture('show');
    history.peek().endGesture();
    kept.put(open.peek());
  };
  const step = (move: 'undo' | 'redo') => {
    endDrag();
    const position = history.peek()[move](kept.open.peek());
    if (position !== null) kept.put(ownNow(position));
  };

  return {
    canUndo: computed(() => history.value.canUndo.value),
    canRedo: computed(() => history.value.canRedo.value),
    beginGesture: () => history.peek().beginGesture(),
    endGesture(isTakenAway = false) {
      if (isTakenAway) revertGesture('put');
      else history.peek().endGesture();
    },
    change(part) {
      endDrag();
      const before = open.peek();
      if (!isSameLayout(before, { ...before, ...part })) make(part, 'put');
    },
    isDragging,
    drag(part) {
      beforeDrag ??= open.peek();
      history.peek().beginGesture();
      batch(() => {
        isDragging.value = true;
        make(part, 'show');
      });
    },
    endDrag,
    cancelDrag: () =>
      batch(() => {
        if (letGo() !== null) revertGesture('show');
      }),
    undo: () => step('undo'),
    redo: () => step('redo'),
  };
}

function isSameLayout(one: Layout, other: Layout): boolean {
  return isSame(layoutOf(one), layoutOf(other));
}

function layoutOf({ lengthM, widthM, balls, goal, legal = 'any', zone }: Layout): Layout {
  return { lengthM, widthM, balls, goal, legal, zone };
}
