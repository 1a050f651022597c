import type { Goal } from '../goal/goal';
import type { Stroke } from '../stroke/stroke';

/** Tells a way from every other, and a copy of it from none: by what it does, and by its stroke. */
export function wayId({
  goal,
  headingRad,
  stroke,
}: {
  readonly goal: Goal;
  readonly headingRad: number;
  readonly stroke: Stroke;
}): string {
  return JSON.stringify([goal, headingRad, stroke]);
}

/** The same of a way that was worked out. */
export function toldId({
  goal,
  headingRad,
  option: { stroke },
}: {
  readonly goal: Goal;
  readonly headingRad: number;
  readonly option: { readonly stroke: Stroke };
}): string {
  return wayId({ goal, headingRad, stroke });
}
