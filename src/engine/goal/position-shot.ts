import type { BallName, Bridge, LeastElevation } from '../lie/position';
import type { Target } from './target';

/** Something that would be hit on the way. */
export interface InTheWay {
  /** Who would hit it: the cue ball before it comes to the object ball, or that on its way. */
  readonly mover: 'cue' | 'object';
  /** A ball, or a cushion's point beside the pocket. */
  readonly what: BallName | 'jaw';
}

/** A shot as it follows from a position, all but the stroke. */
export interface PositionShot {
  readonly ok: true;
  readonly distanceM: number;
  readonly cutRad: number;
  /** Direction of the straight line over the table: 0 runs along y, right +, rad. */
  readonly headingRad: number;
  /** Where the cue ball is to be when it meets the ball. */
  readonly ghost: { readonly xM: number; readonly yM: number };
  /** The mouth as the ball sees it: askew, it is narrower. */
  readonly target: Extract<Target, { kind: 'mouth' }>;
  readonly inTheWay: readonly InTheWay[];
  readonly least: LeastElevation;
  readonly bridge: Bridge;
}

/** Why there is no shot at all. */
export interface NoShot {
  readonly ok: false;
  readonly reason:
    | 'no-cue-ball'
    | 'no-such-ball'
    | 'overlap'
    | 'off-bed'
    | 'too-thin'
    | 'pocket-closed';
  /** The one it is about, where it is about one. */
  readonly ball?: BallName;
}
