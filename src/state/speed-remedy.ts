import type { Shot } from '../engine/direct/shot';
import type { Target } from '../engine/goal/target';
import type { Kit } from '../engine/kit/kit';
import { nudge } from '../units/nudge';
import type { SpeedScale } from '../units/speed-unit';

/** The speed nearest to a shot's at which the ball goes, m/s; null where there is none. */
export type NearestSpeed = (shot: Shot, kit: Kit, target: Target) => number | null;
/** Whether a shot, played just as meant, gets the ball into its target. */
export type GoesAsMeant = (shot: Shot, kit: Kit, target: Target) => boolean;

/**
 * A speed in the shown unit, rounded as people say it, at which a refused shot goes; null where
 * there is none, or none that survives the rounding.
 */
export function speedRemedy(
  shot: Shot,
  kit: Kit,
  target: Target,
  { facts, inUnit, inMps }: SpeedScale,
  nearest: NearestSpeed,
  goes: GoesAsMeant,
): number | null {
  const speedMps = nearest(shot, kit, target);
  if (speedMps === null) return null;
  const towards = speedMps > shot.speedMps ? 1 : -1;
  const range = { min: 0, max: Number.POSITIVE_INFINITY };
  const figure = nudge(inUnit(speedMps), facts.fineStep, towards, range);
  return goes({ ...shot, speedMps: inMps(figure) }, kit, target) ? figure : null;
}
