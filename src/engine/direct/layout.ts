import { bearing } from '../numerics/angle';
import type { Shot } from './shot';

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
export function layoutOf(shot: Shot, ballRadiusM: number): Layout {
  const reachM = 2 * ballRadiusM;
  const objectXM = reachM * Math.sin(shot.cutRad);
  const objectYM = shot.distanceM + reachM * Math.cos(shot.cutRad);
  return {
    objectXM,
    objectYM,
    separationM: Math.hypot(objectXM, objectYM),
    bearingRad: bearing(objectXM, objectYM),
    reachM,
  };
}
