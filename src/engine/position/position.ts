import type { Target } from '../room/target';
import type { PocketName } from '../table/pocket-shape';

/** The cue ball, or an object ball by the number on it, 1 to 15. */
export type BallName = 'cue' | number;

/** Where the centre of a ball lies, in the frame of the table, m: see `TableShape`. */
export interface NamedBall {
  readonly name: BallName;
  readonly xM: number;
  readonly yM: number;
}

/** Balls on a table, in any order; each name at most once. */
export type Position = readonly NamedBall[];

/** What is to be done from a position. */
export interface Intent {
  readonly ball: number;
  readonly pocket: PocketName;
}

/** Something that would be hit on the way. */
export interface InTheWay {
  /** Who would hit it: the cue ball before it comes to the object ball, or that on its way. */
  readonly mover: 'cue' | 'object';
  /** A ball, or a cushion's point beside the pocket. */
  readonly what: BallName | 'jaw';
}

/** Why the cue cannot be as level as could be. */
export interface LeastElevation {
  readonly elevationRad: number;
  /** What the cue has to clear: nothing but the room's air, a cushion, or a ball. */
  readonly over: 'nothing' | 'cushion' | BallName;
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
  /** Whether a hand can be set down behind the cue ball. */
  readonly bridge: 'on-the-bed' | 'on-the-rail' | 'over-a-ball' | 'nowhere';
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
  /** One plain sentence. */
  readonly message: string;
}
