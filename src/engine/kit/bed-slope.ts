import type { BedSlope } from './kit';

/** A bed's slope as it is seen along another direction, turned by an angle (rad, right +). */
export function slopeSeenAlong(slope: BedSlope, turnRad: number): BedSlope {
  const { alongM_per_M: along, rightM_per_M: right } = slope;
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return { alongM_per_M: along * c + right * s, rightM_per_M: right * c - along * s };
}
