import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { joinRows } from '../store/tabs/join-rows';
import type { Asked } from './shot-field';

/** Changes to what is asked that can be taken back, one by one. */
export interface ShotHistory {
  readonly canUndo: ReadonlySignal<boolean>;
  /** Changes until {@link endGesture} count as one. Gestures do not nest: a second call is ignored. */
  beginGesture(): void;
  /** @param revert also takes back what the gesture changed, as if it had never begun. */
  endGesture(revert?: boolean): void;
  /** Replaces a part of it. One that is the same in every number is no change. */
  change(part: Partial<Asked>): void;
  undo(): void;
}

interface Step {
  readonly before: Asked;
  readonly after: Asked;
}

/** More than anybody takes back; keeps an evening of changes from growing without bound. */
const MAX_STEPS = 200;

/** Keeps a history of what lives elsewhere. */
export function createShotHistory(
  asked: ReadonlySignal<Asked>,
  set: (asked: Asked) => void,
): ShotHistory {
  const past = signal<readonly Step[]>([]);
  let gestureStart: Asked | null = null;
  let gestureLogged = false;

  function log(before: Asked, after: Asked): void {
    const isOfGesture = gestureStart !== null && gestureLogged;
    gestureLogged = gestureStart !== null;
    const steps = past.peek();
    const step = isOfGesture ? steps.at(-1) : undefined;
    const earlier = step ? steps.slice(0, -1) : steps.slice(1 - MAX_STEPS);
    past.value = [...earlier, { before: step?.before ?? before, after }];
  }

  function undo(): void {
    const step = past.peek().at(-1);
    if (step === undefined) return;
    past.value = past.peek().slice(0, -1);
    // What another tab changed meanwhile stays.
    set(joinRows(step.after, asked.peek(), step.before).row);
  }

  return {
    canUndo: computed(() => past.value.length > 0),
    beginGesture() {
      gestureStart ??= asked.peek();
    },
    endGesture(revert = false) {
      const logged = gestureLogged;
      gestureStart = null;
      gestureLogged = false;
      if (revert && logged) undo();
    },
    change(part) {
      const before = asked.peek();
      const next = { ...before, ...part };
      if (isSame(next.shot, before.shot) && isSame(next.pocket, before.pocket)) return;
      log(before, next);
      set(next);
    },
    undo,
  };
}

/** Whether two of a kind hold the same values. */
export function isSame<T extends object>(a: T, b: T): boolean {
  const keys = Object.keys({ ...a, ...b }) as (keyof T)[];
  return keys.every((key) => Object.is(a[key], b[key]));
}
