import { computed, type ReadonlySignal } from '@preact/signals';
import type { Kit } from '../../engine/model/kit';
import type { Intent, NoShot, PositionShot } from '../../engine/position/position';
import { shotFrom } from '../../engine/position/shot-from-position';
import type { TableShape } from '../../engine/table/table-shape';
import type { SavedPosition } from '../../store/saved-position';

/** What is to be played; null while no ball and pocket are chosen. */
export function intentOf({ intent: { ball, pocket } }: SavedPosition): Intent | null {
  return ball === null || pocket === null ? null : { ball, pocket };
}

export function positionShot(
  open: ReadonlySignal<SavedPosition>,
  shape: ReadonlySignal<TableShape>,
  kit: ReadonlySignal<Kit>,
): ReadonlySignal<PositionShot | NoShot | null> {
  return computed(() => {
    const intent = intentOf(open.value);
    return intent && shotFrom(open.value.balls, intent, shape.value, kit.value);
  });
}

/** The last one that was a shot, as long as the same position is open. */
export function lastShotOf(
  shot: ReadonlySignal<PositionShot | NoShot | null>,
  openId: ReadonlySignal<string>,
): ReadonlySignal<PositionShot | null> {
  let last: { readonly id: string; readonly shot: PositionShot } | null = null;
  return computed(() => {
    const now = shot.value;
    const id = openId.value;
    if (now?.ok) last = { id, shot: now };
    return last !== null && last.id === id ? last.shot : null;
  });
}
