import { bearing } from '../numerics/angle';
import { length } from '../numerics/length';
import type { TwoBalls } from './shot';

/** Where the object ball lies, seen from the cue ball's centre at the origin; y is the straight line. */
export interface Layout {
  readonly objectXM: number;
  readonly objectYM: number;
  /** Centre to centre, m. */
  readonly separationM: number;
  /** Of the object ball from the straight line, right +, rad. */
  readonly bearingRad: number;
  /** Sum of the two radii, m. */
  readonly reachM: number;
}

/** The object ball's place from the ghost ball's, a ball's width beyond it along the target line. */
export function layoutOf({ distanceM, cutRad }: TwoBalls, ballRadiusM: number): Layout {
  const reachM = 2 * ballRadiusM;
  const objectXM = reachM * Math.sin(cutRad);
  const objectYM = distanceM + reachM * Math.cos(cutRad);
  return {
    objectXM,
    objectYM,
    separationM: length(objectXM, objectYM),
    bearingRad: bearing(objectXM, objectYM),
    reachM,
  };
}
