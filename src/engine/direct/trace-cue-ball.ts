import type { Kit } from '../kit/kit';
import { type Motion, newPlace, placeAt } from '../motion/phase';
import { checkQuery } from './check-query';
import { play } from './contact';
import { layoutOf } from './layout';
import { type Shot, strokeOf } from './shot';

/** A point of the cue ball's path, m; right + of and along the straight line. */
export interface TracePoint {
  readonly xM: number;
  readonly yM: number;
  readonly heightM: number;
  readonly motion: Motion;
}

/**
 * Points on the cue ball's path at an aim (rad), from the strike to its touch of the object ball or
 * its rest, for drawing. Each phase gives at least its two ends.
 *
 * @param samples how many steps to spread over the path, by time
 * @returns no points where the engine cannot take the query
 */
export function traceCueBall(
  shot: Shot,
  kit: Kit,
  aimRad: number,
  samples: number,
): readonly TracePoint[] {
  if (checkQuery(shot, kit, aimRad) !== null) return [];
  const { journey } = play(strokeOf(shot, aimRad), layoutOf(shot, kit.ballRadiusM), kit);
  const place = newPlace();
  return journey.phases.flatMap((phase) => {
    const steps = Math.max(1, Math.round((samples * phase.durationS) / journey.endS));
    return Array.from({ length: steps + 1 }, (_, step) => {
      placeAt(phase, (phase.durationS * step) / steps, place);
      return { xM: place.xM, yM: place.yM, heightM: place.zM, motion: phase.motion };
    });
  });
}
