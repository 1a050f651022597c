import type { LaidShot } from '../store/records';
import { ballToBallGapM, ghostBallDistanceM } from '../units/ball-to-ball';
import { CUT_UNITS, cutSizeInRad, cutSizeInUnit } from '../units/cut-unit';
import type { FieldContext, ShotField } from './shot-field';
import { withinShot } from './within-shot';

/** The size of the cut; its side is set apart. */
export function cutField(shot: LaidShot, context: FieldContext): ShotField {
  const unit = context.preferences.cutUnit;
  const range = unit === 'degrees' ? { min: 0, max: 90 } : { min: 0, max: 1 };
  return {
    facts: CUT_UNITS[unit],
    figure: cutSizeInUnit(shot.cutRad, unit),
    range,
    usual: range,
    put(figure) {
      const size = cutSizeInRad(figure, unit);
      return size.ok ? { ok: true, value: { shot: withCut(shot, size.value, context) } } : size;
    },
  };
}

/**
 * The shot with another cut. A person who measures from ball to ball has the balls lie still while
 * the cut changes, so the way to the ghost ball changes with it.
 */
export function withCut(shot: LaidShot, cutSizeRad: number, context: FieldContext): LaidShot {
  const cutRad = cutSizeRad === 0 ? 0 : context.cutSign * cutSizeRad;
  if (context.preferences.distanceFrom === 'ghost-ball') return { ...shot, cutRad };
  const gap = ballToBallGapM(shot.distanceM, shot.cutRad, context.ballRadiusM);
  if (!gap.ok) return { ...shot, cutRad };
  const distance = ghostBallDistanceM(gap.value, cutRad, context.ballRadiusM);
  const moved = distance.ok ? withinShot(shot, { distanceM: distance.value, cutRad }) : distance;
  return moved.ok ? moved.value.shot : { ...shot, cutRad };
}
