import { firstTouch } from '../motion/first-touch';
import { pullAlong, SKIMMING_M } from './approach-pair';
import type { CushionShape } from './cushion-shape';
import type { Field } from './field';
import { type Mover, placeOf } from './mover';
import { nearestOnCushion } from './nearest-on-cushion';
import { answeredAt } from './slow-touch';

/**
 * Writes how a ball and a cushion stand, and the nearest place of its edge. To a ball a cushion is
 * a thin plate at nose height: from the bed it is met at the edge, from above a little on top.
 */
export function lookAtCushion(
  field: Field,
  mover: Mover,
  cushion: CushionShape,
  clockS: number,
): void {
  const { approach, nearest, one: place } = field.scratch;
  const { ballRadiusM } = field.kit;
  placeOf(mover, clockS, place);
  nearestOnCushion(cushion, place.xM, place.yM, nearest);
  const riseM = (field.kit.cushion.noseHeight - 1) * ballRadiusM - place.zM;
  const distanceM = Math.sqrt(nearest.awayM * nearest.awayM + riseM * riseM);
  const level = nearest.awayM / distanceM;
  const [x, y, z] = [nearest.nx * level, nearest.ny * level, riseM / distanceM];
  approach.gapM = distanceM - ballRadiusM;
  approach.closing = place.vx * x + place.vy * y + place.vz * z;
  approach.pull = pullAlong(mover.phase, x, y, z);
}

/** When a ball meets a cushion, s, seen from a time (s); Infinity: not by `untilS`. */
export function cushionTime(
  field: Field,
  mover: Mover,
  cushion: CushionShape,
  nowS: number,
  untilS: number,
  metS: number,
): number {
  const { approach } = field.scratch;
  const look = (timeS: number) => lookAtCushion(field, mover, cushion, nowS + timeS);
  const touchS = nowS + firstTouch(look, approach, untilS - nowS, SKIMMING_M);
  return approach.settled ? answeredAt(touchS, approach.closing, metS) : touchS;
}

/** When the centre of a ball in flight comes over a cushion, likewise. */
export function overCushionTime(
  field: Field,
  mover: Mover,
  cushion: CushionShape,
  nowS: number,
  untilS: number,
): number {
  const { approach, nearest, one: place } = field.scratch;
  const look = (timeS: number) => {
    placeOf(mover, nowS + timeS, place);
    nearestOnCushion(cushion, place.xM, place.yM, nearest);
    approach.gapM = nearest.awayM;
    approach.closing = place.vx * nearest.nx + place.vy * nearest.ny;
    approach.pull = pullAlong(mover.phase, nearest.nx, nearest.ny, 0);
  };
  return nowS + firstTouch(look, approach, untilS - nowS);
}
