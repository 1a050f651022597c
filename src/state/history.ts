import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { isSame } from '../store/same-value';
import { joinRows } from '../store/tabs/join-rows';

/** A change of a state, from what to what. */
export interface Step<T> {
  readonly before: T;
  readonly after: T;
}

/** Presses and drags, the changes of each of which count as one. */
export interface Gestures {
  /**
   * Changes until {@link endGesture} count as one. Gestures do not nest: a second call is ignored.
   * @param isFinger whether a finger is down: nothing is saved until it is up
   */
  beginGesture(isFinger?: boolean): void;
  /** @param isTakenAway also takes back what the gesture changed, as if it had never begun */
  endGesture(isTakenAway?: boolean): void;
}

/**
 * Changes to a state that lives elsewhere, each of which can be taken back and made again. What is
 * taken back is the change, not the state: what another tab did meanwhile stays.
 */
export interface History<T> {
  /** Whether there is a change to take back, beside one under way. */
  readonly canUndo: ReadonlySignal<boolean>;
  /** Whether a gesture has changed something: {@link undo} takes that back. */
  readonly isUnderWay: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** See {@link Gestures}. */
  beginGesture(): void;
  /** Ends a gesture. One that led back to where it began leaves nothing to take back. */
  endGesture(): void;
  /** Ends a gesture as if it had never begun. Gives the state to go back to; null where it is the present one. */
  revertGesture(now: T): T | null;
  /** Notes a change just made; what was taken back before it cannot come again. */
  note(before: T, after: T): void;
  /** The present state without its last change; null where there is none. */
  undo(now: T): T | null;
  /** The present state with the change last taken back; null where there is none. */
  redo(now: T): T | null;
}

/** More than anybody takes back; keeps an evening of changes from growing without bound. */
const MAX_STEPS = 200;

/**
 * Kept while the app is open.
 * @param isUnchanged whether two states are the same in all that can be taken back
 */
export function createHistory<T>(isUnchanged: (one: T, other: T) => boolean = isSame): History<T> {
  const past = signal<readonly Step<T>[]>([]);
  const future = signal<readonly Step<T>[]>([]);
  const underWay = signal<Step<T> | null>(null);
  let isGesture = false;

  const add = (step: Step<T>) => {
    past.value = [...past.peek().slice(1 - MAX_STEPS), step];
    future.value = [];
  };
  const close = (): Step<T> | null => {
    const step = underWay.peek();
    underWay.value = null;
    isGesture = false;
    return step;
  };
  const endGesture = () => {
    const step = close();
    if (step && !isUnchanged(step.before, step.after)) add(step);
  };
  /** Counts what was changed so far. A gesture that goes on, as in a field that is typed in, begins anew. */
  const settle = () => {
    const goesOn = isGesture;
    endGesture();
    isGesture = goesOn;
  };

  return {
    canUndo: computed(() => past.value.length > 0),
    isUnderWay: computed(() => underWay.value !== null),
    canRedo: computed(() => future.value.length > 0),
    beginGesture() {
      isGesture = true;
    },
    endGesture,
    revertGesture(now) {
      const step = close();
      return step && withoutStep(step, now);
    },
    note(before, after) {
      if (!isGesture) return add({ before, after });
      const soFar = underWay.peek();
      underWay.value = { before: soFar ? withoutStep(soFar, before) : before, after };
    },
    undo(now) {
      settle();
      const step = past.peek().at(-1);
      if (step === undefined) return null;
      past.value = past.peek().slice(0, -1);
      future.value = [...future.peek(), step];
      return withoutStep(step, now);
    },
    redo(now) {
      settle();
      const step = future.peek().at(-1);
      if (step === undefined) return null;
      future.value = future.peek().slice(0, -1);
      past.value = [...past.peek(), step];
      return withoutStep({ before: step.after, after: step.before }, now);
    },
  };
}

/** A state as it would be had a change of it not been made; what else changed since stays. */
export function withoutStep<T>({ before, after }: Step<T>, now: T): T {
  return now === after ? before : joinRows(after, now, before).row;
}
