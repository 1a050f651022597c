import { computed, type ReadonlySignal, signal } from '@preact/signals';
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

/** More than anybody takes back; keeps an evening of changes from growing without bound. */
const MAX_STEPS = 200;

/** Keeps a history of what lives elsewhere. */
export function createShotHistory(
  asked: ReadonlySignal<Asked>,
  set: (asked: Asked) => void,
): ShotHistory {
  const past = signal<readonly Asked[]>([]);
  let gestureStart: Asked | null = null;
  let gestureLogged = false;

  function log(before: Asked): void {
    if (gestureStart !== null && gestureLogged) return;
    gestureLogged = gestureStart !== null;
    past.value = [...past.peek().slice(1 - MAX_STEPS), before];
  }

  function undo(): void {
    const before = past.peek().at(-1);
    if (before === undefined) return;
    past.value = past.peek().slice(0, -1);
    set(before);
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
      log(before);
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
