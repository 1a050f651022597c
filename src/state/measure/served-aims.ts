import { enoughAimRad } from '../../engine/fit/enough';
import { allowedRad } from '../../engine/goal/target';
import type { DeskModel } from '../desk-model';
import type { ServedAims } from './work-report';

/** What readings are taken for: the shots asked lately, and that the aim of the present one be sure enough. */
export function servedAims(
  desk: Pick<DeskModel, 'shot' | 'recentShots' | 'pocket'>,
  ballRadiusM: number,
): ServedAims {
  const [recent, shot] = [desk.recentShots.value, desk.shot.value];
  const allowed = allowedRad({ kind: 'mouth', ...desk.pocket.value }, ballRadiusM);
  return {
    aims: recent.length > 0 ? recent : [shot],
    goal: { shot, enoughRad: enoughAimRad(shot, allowed, ballRadiusM) },
  };
}
