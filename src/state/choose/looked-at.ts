import { computed, type ReadonlySignal } from '@preact/signals';
import { directGoal, type Goal } from '../../engine/goal/goal';
import type { Option } from '../../engine/plan/solve-option';
import type { Stroke } from '../../engine/stroke/stroke';
import type { ShotToLog } from '../log/shot-to-log';
import type { AllWays } from './all-ways/all-ways';
import type { Choosing } from './choosing';

/** A way that is looked at. */
export interface LookedAt {
  readonly goal: Goal;
  /** In the table's frame. */
  readonly stroke: Stroke;
}

/**
 * The way looked at, of whichever list is shown; null where there is none, or the balls lie otherwise
 * since.
 *
 * @param toLog null where that of straight shots is out of date
 */
export function wayLookedAt(
  all: Pick<AllWays, 'isDirect' | 'chosen' | 'isMoved'>,
  { chosen, chosenFor }: Pick<Choosing, 'chosen' | 'chosenFor'>,
  toLog: ReadonlySignal<ShotToLog | null>,
): ReadonlySignal<LookedAt | null> {
  return computed(() => {
    if (all.isDirect.value) {
      const [way, asked] = [chosen.value, chosenFor.value];
      if (toLog.value === null || way === null || asked === null) return null;
      const { goal, headingRad } = asked.scene;
      const { ball, pocket } = goal;
      return { goal: directGoal(ball, pocket), stroke: overTable(way.option, headingRad) };
    }
    const way = all.isMoved.value ? null : all.chosen.value;
    // A safety sends no ball anywhere: there is nothing to have made.
    if (way === null || 'struck' in way.told) return null;
    const { goal, option, headingRad } = way.told;
    return { goal, stroke: overTable(option, headingRad) };
  });
}

/** @param headingRad what the stroke's aim is measured from */
function overTable({ stroke }: Option, headingRad: number): Stroke {
  return { ...stroke, aimRad: (headingRad + stroke.aimRad) % (2 * Math.PI) };
}
