import { strike } from '../../impacts/strike';
import type { Kit } from '../../kit/kit';
import { type Crossing, lineCrossing } from '../../motion/line-crossing';
import { runOf } from '../../motion/run';
import type { Stroke } from '../../stroke/stroke';
import type { Readings, TrialSetup } from './trial';

/**
 * Where and when a lone cue ball reaches the far cushion; null where it stops before.
 *
 * @param kit its bed's slope as seen along the meant line
 * @param stroke its aim is measured from the meant line, right +
 */
export function predictLanding(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const crossing = landingOf(kit, stroke, setup.distanceM);
  return crossing && { landingM: crossing.rightM, timeS: crossing.timeS };
}

/** Where the cue ball crosses the line square to the meant one at a distance, m. */
export function landingOf(kit: Kit, stroke: Stroke, distanceM: number): Crossing | null {
  const run = runOf(strike(stroke, kit), 0, kit);
  return lineCrossing(run, { fromXM: 0, fromYM: 0, alongRad: 0, distanceM });
}
