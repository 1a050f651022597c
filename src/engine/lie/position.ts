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

/** Why the cue cannot be as level as could be. */
export interface LeastElevation {
  readonly elevationRad: number;
  /** What the cue has to clear: nothing but the room's air, a cushion, or a ball. */
  readonly over: 'nothing' | 'cushion' | BallName;
}

/** Whether a hand can be set down behind the cue ball. */
export type Bridge = 'on-the-bed' | 'on-the-rail' | 'over-a-ball' | 'nowhere';

/** A ball that cannot lie where it does. */
export interface Misplaced {
  /** It lies in another, or not free on the bed. */
  readonly reason: 'overlap' | 'off-bed';
  readonly ball: BallName;
}
