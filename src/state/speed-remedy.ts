import type { Shot, SolveAim } from '../engine/aim/shot';
import type { Kit } from '../engine/model/kit';
import { nudge } from '../units/nudge';
import type { SpeedScale } from '../units/speed-unit';

/** The speed nearest to a refused shot's at which there is an aim, m/s; null where there is none. */
export type NearestSpeed = (shot: Shot, kit: Kit) => number | null;

/**
 * A speed in the shown unit, rounded as people say it, at which a refused shot has an aim; null
 * where there is none, or none that survives the rounding.
 */
export function speedRemedy(
  shot: Shot,
  kit: Kit,
  { facts, inUnit, inMps }: SpeedScale,
  nearest: NearestSpeed,
  solve: SolveAim,
): number | null {
  const speedMps = nearest(shot, kit);
  if (speedMps === null) return null;
  const towards = speedMps > shot.speedMps ? 1 : -1;
  const range = { min: 0, max: Number.POSITIVE_INFINITY };
  const figure = nudge(inUnit(speedMps), facts.fineStep, towards, range);
  return solve({ ...shot, speedMps: inMps(figure) }, kit).ok ? figure : null;
}
