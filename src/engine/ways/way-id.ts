import type { Goal, SafetyGoal } from '../goal/goal';
import type { Stroke } from '../stroke/stroke';

/** Tells a way from every other, and a copy of it from none: by what it does, and by its stroke. */
export function wayId(
  { goal, headingRad }: { readonly goal: Goal | SafetyGoal; readonly headingRad: number },
  stroke: Stroke,
): string {
  return JSON.stringify([goal, headingRad, stroke]);
}
