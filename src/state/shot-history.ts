import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Shot } from '../engine/aim/shot';

/** Changes to the shot that can be taken back, one by one. */
export interface ShotHistory {
  readonly canUndo: ReadonlySignal<boolean>;
  /** Changes until {@link endGesture} count as one. Gestures do not nest: a second call is ignored. */
  beginGesture(): void;
  /** @param revert also takes back what the gesture changed, as if it had never begun. */
  endGesture(revert?: boolean): void;
  /** Replaces the shot. One that is the same in every number is no change. */
  change(shot: Shot): void;
  undo(): void;
}

/** More than anybody takes back; keeps an evening of changes from growing without bound. */
const MAX_STEPS = 200;

/** Keeps a history of a shot that lives elsewhere. */
export function createShotHistory(
  shot: ReadonlySignal<Shot>,
  setShot: (shot: Shot) => void,
): ShotHistory {
  const past = signal<readonly Shot[]>([]);
  let gestureStart: Shot | null = null;
  let gestureLogged = false;

  function log(before: Shot): void {
    if (gestureStart !== null && gestureLogged) return;
    gestureLogged = gestureStart !== null;
    past.value = [...past.peek().slice(1 - MAX_STEPS), before];
  }

  function undo(): void {
    const before = past.peek().at(-1);
    if (before === undefined) return;
    past.value = past.peek().slice(0, -1);
    setShot(before);
  }

  return {
    canUndo: computed(() => past.value.length > 0),
    beginGesture() {
      gestureStart ??= shot.peek();
    },
    endGesture(revert = false) {
      const logged = gestureLogged;
      gestureStart = null;
      gestureLogged = false;
      if (revert && logged) undo();
    },
    change(next) {
      const before = shot.peek();
      if (isSame(next, before)) return;
      log(before);
      setShot(next);
    },
    undo,
  };
}

function isSame(a: Shot, b: Shot): boolean {
  const keys = Object.keys({ ...a, ...b }) as (keyof Shot)[];
  return keys.every((key) => Object.is(a[key], b[key]));
}
