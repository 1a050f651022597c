import type { Shot } from '../../../src/engine/direct/shot';
import type { Kit } from '../../../src/engine/kit/kit';
import type { Body } from '../reference/body';
import type { Stroke } from '../reference/tip-strike';

/** A ball at a time since it was let go. */
export interface BodyAt {
  readonly body: Body;
  readonly timeS: number;
}

/**
 * Physics that can be asked for figures: the engine, or the reference. Both are held to the same
 * published ones.
 */
export interface Subject {
  readonly name: string;
  /** The cue ball as it leaves the tip, the cue along y. */
  strike(stroke: Stroke, kit: Kit): Body;
  /** A ball let go on the bed, as it begins to roll, or rests if it never does. */
  untilRoll(body: Body, kit: Kit): BodyAt;
  untilRest(body: Body, kit: Kit): BodyAt;
  /** Both balls just after the cue ball touches a resting one at this bearing from it, rad. */
  hit(cueBall: Body, bearingRad: number, kit: Kit): { readonly [ball in 'cue' | 'object']: Body };
  /** A ball just after it met a straight cushion that lies square ahead, along x. */
  rebound(ball: Body, kit: Kit): Body;
  /** Direction in which the object ball leaves at an aim, rad; NaN where it is missed. */
  objectDirectionRad(shot: Shot, kit: Kit, aimRad: number): number;
}
