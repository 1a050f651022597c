import type { Goal, Step } from '../goal/goal';
import type { Stroke } from '../stroke/stroke';

/** What names a way: what it does, and by which stroke. */
interface NamedWay {
  readonly goal: Goal;
  readonly headingRad: number;
  readonly stroke: Stroke;
}

/** What happens, and to which ball, in one word. */
export function keyOf(via: readonly Step[], ball: number): string {
  const steps = via.map((step) => `${step.by}>${'ball' in step ? step.ball : step.cushion}`);
  return `${ball}: ${steps.join(' ')}`;
}

/** What happens, whatever the stroke. */
export function thingOf({ goal }: Pick<NamedWay, 'goal'>): string {
  return `${goal.kind} ${goal.pocket} ${keyOf(goal.via, goal.ball)}`;
}

/** Tells a way from every other, and a copy of it from none. */
export function wayId({ goal, headingRad, stroke }: NamedWay): string {
  const { aimRad, side, height, elevationRad, speedMps } = stroke;
  const numbers = [headingRad, aimRad, side, height, elevationRad, speedMps];
  return `${thingOf({ goal })} ${numbers.map((value) => value.toFixed(9)).join(' ')}`;
}

/** The same of a way that was worked out. */
export function toldId({
  option,
  ...way
}: Omit<NamedWay, 'stroke'> & { readonly option: Pick<NamedWay, 'stroke'> }): string {
  return wayId({ ...way, stroke: option.stroke });
}
