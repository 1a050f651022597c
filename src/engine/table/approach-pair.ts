import { firstTouch } from '../motion/first-touch';
import type { Phase } from '../motion/phase';
import type { Field } from './field';
import { type Mover, phaseEnd, placeOf } from './mover';
import { areApart } from './plan-box';
import { answeredAt } from './slow-touch';

/** Where a path skims a surface on a tilted bed, steps cover at least this, m. */
export const SKIMMING_M = 1e-8;

/** When two balls meet, s, seen from a time (s); Infinity: not as they now move. */
export function meetingTime(
  field: Field,
  one: Mover,
  other: Mover,
  nowS: number,
  metS: number,
): number {
  if (one.phase === null && other.phase === null) return Number.POSITIVE_INFINITY;
  if (areApart(one.box, other.box, 2 * field.kit.ballRadiusM)) return Number.POSITIVE_INFINITY;
  const untilS = Math.min(phaseEnd(one), phaseEnd(other));
  const { approach } = field.scratch;
  const look = (timeS: number) => lookAtPair(field, one, other, nowS + timeS);
  const touchS = nowS + firstTouch(look, approach, untilS - nowS, SKIMMING_M);
  const answerS = approach.settled ? answeredAt(touchS, approach.closing, metS) : touchS;
  return answerS <= untilS ? answerS : Number.POSITIVE_INFINITY;
}

/** Writes how the centre of one ball and the ball of radius 2R around the other stand. */
export function lookAtPair(field: Field, one: Mover, other: Mover, clockS: number): void {
  const { approach, one: a, other: b } = field.scratch;
  placeOf(one, clockS, a);
  placeOf(other, clockS, b);
  const dx = b.xM - a.xM;
  const dy = b.yM - a.yM;
  const dz = b.zM - a.zM;
  const distanceM = Math.sqrt(dx * dx + dy * dy + dz * dz);
  approach.gapM = distanceM - 2 * field.kit.ballRadiusM;
  approach.closing = ((a.vx - b.vx) * dx + (a.vy - b.vy) * dy + (a.vz - b.vz) * dz) / distanceM;
  approach.pull =
    pullAlong(one.phase, dx / distanceM, dy / distanceM, dz / distanceM) +
    pullAlong(other.phase, -dx / distanceM, -dy / distanceM, -dz / distanceM);
}

/** Acceleration along a unit vector, m/s², or an upper bound of it. */
export function pullAlong(phase: Phase | null, x: number, y: number, z: number): number {
  if (phase === null) return 0;
  if (phase.drag !== null) return phase.accelerationBound;
  return 2 * (phase.quadraticX * x + phase.quadraticY * y + phase.quadraticZ * z);
}
