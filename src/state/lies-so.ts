import type { LaidShot } from '../store/records';

type Lie = Pick<LaidShot, 'distanceM' | 'cutRad' | 'headingRad'>;

/** Whether a shot still lies as it was laid on a table: one set by hand lies in no direction. */
export function liesSo(shot: Lie, laid: Lie): boolean {
  return (
    shot.headingRad === laid.headingRad &&
    shot.distanceM === laid.distanceM &&
    shot.cutRad === laid.cutRad
  );
}
