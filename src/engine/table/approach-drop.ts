import { firstTouch } from '../motion/first-touch';
import { pullAlong, SKIMMING_M } from './approach-pair';
import type { Field } from './field';
import { type Mover, placeOf } from './mover';
import type { PocketShape } from './pocket-shape';

/** Writes how the centre of a ball and the hole of a pocket stand, seen from above. */
export function lookAtDrop(field: Field, mover: Mover, pocket: PocketShape, clockS: number): void {
  const { approach, one: place } = field.scratch;
  placeOf(mover, clockS, place);
  const dx = pocket.drop.x - place.xM;
  const dy = pocket.drop.y - place.yM;
  const distanceM = Math.sqrt(dx * dx + dy * dy);
  approach.gapM = distanceM - pocket.dropRadiusM;
  approach.closing = (place.vx * dx + place.vy * dy) / distanceM;
  approach.pull = pullAlong(mover.phase, dx / distanceM, dy / distanceM, 0);
}

/** When the centre of a ball comes over a hole, s, seen from a time (s); Infinity: not by `untilS`. */
export function dropTime(
  field: Field,
  mover: Mover,
  pocket: PocketShape,
  nowS: number,
  untilS: number,
): number {
  const { approach } = field.scratch;
  const look = (timeS: number) => lookAtDrop(field, mover, pocket, nowS + timeS);
  return nowS + firstTouch(look, approach, untilS - nowS, SKIMMING_M);
}
