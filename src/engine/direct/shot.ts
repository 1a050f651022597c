import type { Kit } from '../kit/kit';
import type { Range } from '../numerics/range';
import type { Stroke } from '../stroke/stroke';

/**
 * How cue ball, object ball and target line lie. The straight line runs from the cue ball's centre to
 * the ghost ball's; every angle is measured from it, clockwise seen from above, so right is plus.
 */
export interface TwoBalls {
  /** Cue-ball centre to ghost-ball centre, m. */
  readonly distanceM: number;
  /** From the straight line to the target line, rad; + sends the object ball right. */
  readonly cutRad: number;
  /** How far the object ball must travel, m. Left out: every distance will do. */
  readonly objectDistanceM?: number;
}

/** What the player asks about: where the balls lie, and a stroke without its aim. */
export interface Shot extends TwoBalls, Omit<Stroke, 'aimRad'> {}

/** The stroke of a shot at an aim, rad. */
export function strokeOf(shot: Omit<Stroke, 'aimRad'>, aimRad: number): Stroke {
  const { side, height, elevationRad, speedMps } = shot;
  return { aimRad, side, height, elevationRad, speedMps };
}

/** How the cue ball moves at an instant. */
export type MotionName = 'sliding' | 'rolling' | 'flying';

/** A horizontal velocity in polar form. A ball at rest has no direction. */
export interface Heading {
  readonly speedMps: number;
  /** From the straight line, right +; null at rest. */
  readonly directionRad: number | null;
}

/** The cue ball as it first touches the object ball. */
export interface Arrival {
  readonly speedMps: number;
  readonly directionRad: number;
  /** Effective cut: from the cue ball's direction of motion to the line of centres, right +. */
  readonly cutRad: number;
  /** Spin about the vertical, + for right side. */
  readonly sideSpinRadS: number;
  readonly motion: MotionName;
  /** Height of the cue ball's lowest point above the cloth, m. */
  readonly heightM: number;
  readonly timeS: number;
}

/** What each effect adds to the aim; the three sum to it exactly. Right +. */
export interface AimParts {
  readonly squirtRad: number;
  /** All curving between tip and contact, hops included. */
  readonly swerveRad: number;
  readonly throwRad: number;
}

/** A stroke that reaches the object ball, and all that follows from it. */
export interface AimAnswer {
  readonly ok: true;
  /** Horizontal direction of the cue, right + of the straight line. */
  readonly aimRad: number;
  /** How far right of the ghost ball's centre the aim line passes, square to the straight line, m. */
  readonly aimOffsetM: number;
  /** The same for the stick's own axis, which the domed tip shifts further than the contact, m. */
  readonly stickOffsetM: number;
  /** How far right of the object ball's centre the aim line passes, square to the straight line, m. */
  readonly aimOnObjectBallM: number;
  /** The same for the stick's own axis, m. */
  readonly stickOnObjectBallM: number;
  readonly parts: AimParts;
  /**
   * From the cue ball's near surface back to the bridge, m: pivoting there from a centre-ball
   * address on the ghost ball gives this aim with this side. Null where no bridge does.
   */
  readonly pivotBridgeM: number | null;
  readonly arrival: Arrival;
  /** The object ball just after contact. */
  readonly objectBall: Heading;
  /** The cue ball just after contact, and its direction once it rolls. */
  readonly cueBall: Heading & { readonly rollingDirectionRad: number | null };
  /** Other aims that also send the object ball along the target line, smallest first. */
  readonly otherAimsRad: readonly number[];
}

export type RefusalReason =
  | 'out-of-range'
  | 'beyond-miscue-limit'
  | 'never-stops'
  | 'stops-short'
  | 'curves-away'
  | 'too-thin'
  | 'flies-over'
  | 'misses'
  | 'object-ball-cannot-reach'
  | 'no-convergence';

/** The input a refusal is about, named as in {@link Shot}; the others whole. */
export type RefusalField = keyof Shot | 'aimRad' | 'kit' | 'target';

/** No answer, and why. */
export interface Refusal {
  readonly ok: false;
  readonly reason: RefusalReason;
  readonly field?: RefusalField;
  /** Of a kit or a target the quantity at fault, dotted where nested. */
  readonly quantity?: string;
  /** What that or the field may be, in its own unit. */
  readonly range?: Range;
}

export type AimResult = AimAnswer | Refusal;

/** Finds the aim that sends the object ball along the target line. */
export type SolveAim = (shot: Shot, kit: Kit) => AimResult;
/** Tells what happens at a given aim. */
export type PlayAim = (shot: Shot, kit: Kit, aimRad: number) => AimResult;
