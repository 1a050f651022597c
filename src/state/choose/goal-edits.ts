import type { ReadonlySignal } from '@preact/signals';
import { heldWithin } from '../../engine/numerics/range';
import type { TableShape } from '../../engine/table/table-shape';
import { ZONE_RADIUS_RANGE } from '../../store/record-ranges';
import type { SavedPosition, Zone } from '../../store/saved-position';
import type { ChooseModel } from './choose-model';
import type { LayoutEdits } from './layout-edits';

/** Every way to say what to play. */
export type GoalEdits = Pick<ChooseModel, 'playBall' | 'playInto' | 'allow' | 'markZone'>;

export function createGoalEdits(
  open: ReadonlySignal<SavedPosition>,
  shape: ReadonlySignal<TableShape>,
  edits: LayoutEdits,
): GoalEdits {
  const intend = (part: Partial<SavedPosition['goal']>) =>
    edits.change({ goal: { ...open.peek().goal, ...part } });
  return {
    playBall: (ball) => intend({ ball }),
    playInto: (pocket) => intend({ pocket }),
    allow: (legal) => edits.change({ legal }),
    markZone(zone) {
      if (zone === null || isTold(zone)) {
        edits.change({ zone: zone && onBed(zone, shape.peek()) });
      }
    },
  };
}

function isTold({ xM, yM, radiusM }: Zone): boolean {
  return [xM, yM, radiusM].every(Number.isFinite);
}

function onBed({ xM, yM, radiusM }: Zone, { widthM, lengthM }: TableShape): Zone {
  return {
    xM: heldWithin({ min: -widthM / 2, max: widthM / 2 }, xM),
    yM: heldWithin({ min: -lengthM / 2, max: lengthM / 2 }, yM),
    radiusM: heldWithin(ZONE_RADIUS_RANGE, radiusM),
  };
}
