import type { BedSlope, Kit } from './kit';

declare const ALONG: unique symbol;

/**
 * A kit whose bed slopes as it is seen along a shot's straight line. Any other kit's slope is as seen
 * from the break end; {@link kitAlong} is the one way from there to here.
 */
export type KitAlong = Kit & { readonly [ALONG]: true };

/** @param headingRad of the straight line over the table: 0 runs away from the break end, right + */
export function kitAlong(kit: Kit, headingRad: number): KitAlong {
  const bedSlope = slopeSeenAlong(kit.bedSlope, headingRad);
  return { ...kit, bedSlope } satisfies Kit as KitAlong;
}

/** A bed's slope as it is seen along another direction, turned by an angle (rad, right +). */
export function slopeSeenAlong(slope: BedSlope, turnRad: number): BedSlope {
  const { alongM_per_M: along, rightM_per_M: right } = slope;
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return { alongM_per_M: along * c + right * s, rightM_per_M: right * c - along * s };
}
