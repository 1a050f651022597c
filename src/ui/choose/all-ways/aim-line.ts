import { type RailPoint, railPoint } from '../../../diagram/rail-point';
import type { Play } from '../../../engine/worth/worthy-ways';
import { struckAs } from '../../../state/choose/all-ways/shown-way';
import type { ChooseModel } from '../../../state/choose/choose-model';

/** Where the cue points when a way is played: the rail's nose ahead of the cue ball. */
export function aimedAt(choose: Pick<ChooseModel, 'open' | 'shape'>, told: Play): RailPoint | null {
  const { headingRad, option } = struckAs(told);
  const cueBall = choose.open.value.balls.find(({ name }) => name === 'cue');
  if (!cueBall) return null;
  return railPoint(cueBall, headingRad + option.stroke.aimRad, choose.shape.value);
}
