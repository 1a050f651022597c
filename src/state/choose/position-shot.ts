import { computed, type ReadonlySignal } from '@preact/signals';
import { fallingWay } from '../../engine/goal/falling-way';
import type { Pot } from '../../engine/goal/goal';
import { openWay } from '../../engine/goal/open-way';
import type { NoShot, PositionShot } from '../../engine/goal/position-shot';
import { type FindWay, shotFrom } from '../../engine/goal/shot-from-position';
import type { Kit } from '../../engine/kit/kit';
import type { TableShape } from '../../engine/table/table-shape';
import type { SavedPosition } from '../../store/saved-position';

/** What is to be played; null while no ball and pocket are chosen. */
export function goalOf({ goal }: SavedPosition): Pot | null {
  const { ball, pocket } = goal;
  return ball === null || pocket === null ? null : { ...goal, ball, pocket };
}

/** What the open position makes. */
export interface PositionShots {
  /** Null while no ball and pocket are chosen. */
  readonly shot: ReadonlySignal<PositionShot | NoShot | null>;
  /** The last one that was a shot, as long as the same position is open. */
  readonly lastShot: ReadonlySignal<PositionShot | null>;
}

/**
 * The shot of the open position. What of the pocket is open is found by playing balls at it, which
 * takes longer than a drag has between two frames: it is found anew only where something that it
 * hangs on has changed, and, while a ball is dragged, from the points of the cushions alone.
 */
export function positionShot(
  open: ReadonlySignal<SavedPosition>,
  shape: ReadonlySignal<TableShape>,
  kit: ReadonlySignal<Kit>,
  isDragging: ReadonlySignal<boolean>,
): PositionShots {
  const exact = keepingLast(fallingWay);
  let last: { readonly id: string; readonly shot: PositionShot } | null = null;
  const find = () => {
    const goal = goalOf(open.value);
    const findWay: FindWay = isDragging.value
      ? (...of) => exact.known(...of) ?? openWay(...of)
      : exact.find;
    return goal && shotFrom(open.value.balls, goal, shape.value, kit.value, findWay);
  };
  // Noted here, whoever reads the shot: it may be gone by the time that the last one is asked for.
  const shot = computed(() => {
    const now = find();
    if (now?.ok) last = { id: open.value.id, shot: now };
    return now;
  });
  const lastShot = computed(() => {
    const now = shot.value;
    if (now?.ok) return now;
    return last?.id === open.value.id ? last.shot : null;
  });
  return { shot, lastShot };
}

/** Finds a way, and knows the last one as long as nothing that it hangs on changes. */
function keepingLast(findWay: FindWay) {
  let last: { readonly of: Parameters<FindWay>; readonly way: ReturnType<FindWay> } | null = null;
  const isLast = (of: Parameters<FindWay>) => last !== null && isSameQuestion(last.of, of);
  return {
    known: (...of: Parameters<FindWay>) => (isLast(of) ? (last?.way ?? null) : null),
    find(...of: Parameters<FindWay>) {
      if (last === null || !isLast(of)) last = { of, way: findWay(...of) };
      return last.way;
    },
  };
}

/** Pocket, table and kit are the same things as long as nothing about them changes. */
function isSameQuestion([from, ...one]: Parameters<FindWay>, [to, ...other]: Parameters<FindWay>) {
  return from.x === to.x && from.y === to.y && one.every((part, index) => part === other[index]);
}
