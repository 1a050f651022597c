import type { Shot } from '../engine/direct/shot';
import { directPot } from '../engine/goal/direct-pot';
import type { Target } from '../engine/goal/target';
import type { Kit } from '../engine/kit/kit';
import type { goesAsMeant, nearestSpeed } from '../engine/room/nearest-speed';
import { nudge } from '../units/nudge';
import type { SpeedScale } from '../units/speed-unit';

export type NearestSpeed = typeof nearestSpeed;
export type GoesAsMeant = typeof goesAsMeant;

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
  const task = directPot(shot, target, kit.ballRadiusM);
  const speedMps = nearest(task, kit, shot);
  if (speedMps === null) return null;
  const towards = speedMps > shot.speedMps ? 1 : -1;
  const range = { min: 0, max: Number.POSITIVE_INFINITY };
  const figure = nudge(inUnit(speedMps), facts.fineStep, towards, range);
  return goes(task, kit, { ...shot, speedMps: inMps(figure) }) ? figure : null;
}
