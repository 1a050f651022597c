import { missAt, type Task } from '../goal/task';
import { isLevel, type Kit } from '../kit/kit';
import type { Stroke } from '../stroke/stroke';
import type { FoundWay } from './found-way';
import { taskOf } from './refine-found';
import type { WaysQuestion } from './ways-question';

/** How far the bed's slope turns a way, told by the cue's direction that makes up for it, rad, from 0. */
export interface SlopeTurn {
  readonly turnRad: number;
  /** The same of a stroke {@link FIRMER} times as fast. */
  readonly firmerRad: number;
}

/** A quarter firmer. */
const FIRMER = 1.25;
/** The cue is turned by so little to learn what a turn of it does, rad. */
const STEP_RAD = 1e-4;

/**
 * How far the slope of the bed turns a way, and would if it were struck more firmly: by straight lines, from
 * what the same stroke misses by on a level bed. Null where the bed is level, and where on a level bed, or
 * firmer, other things happen.
 */
export function slopeTurn(question: WaysQuestion, way: FoundWay): SlopeTurn | null {
  if (isLevel(question.kit)) return null;
  const { task, kit } = taskOf(question, way);
  const { stroke } = way;
  const turnRad = turnOf(task, kit, stroke);
  const firmerRad = turnOf(task, kit, { ...stroke, speedMps: FIRMER * stroke.speedMps });
  return turnRad === null || firmerRad === null ? null : { turnRad, firmerRad };
}

function turnOf(task: Task, kit: Kit, stroke: Stroke): number | null {
  const level: Kit = { ...kit, bedSlope: { alongM_per_M: 0, rightM_per_M: 0 } };
  const turned = (by: number): Stroke => ({ ...stroke, aimRad: stroke.aimRad + by });
  const sloping = missAt(task, kit, stroke);
  const flat = missAt(task, level, stroke);
  const [left, right] = [-STEP_RAD, STEP_RAD].map((by) => missAt(task, kit, turned(by)));
  if (typeof sloping !== 'number' || typeof flat !== 'number') return null;
  if (typeof left !== 'number' || typeof right !== 'number' || left === right) return null;
  return Math.abs(((flat - sloping) * 2 * STEP_RAD) / (right - left));
}
