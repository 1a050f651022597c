import type { AimMark } from '../units/unit-names';
import type { TipOnBall } from './near-ball';

/** Where an aim line and the stick's axis of the same stroke pass, m, right +. */
export interface LineMarks {
  readonly aimOffsetM: number;
  readonly aimOnObjectBallM: number;
  readonly stickOffsetM: number;
  readonly stickOnObjectBallM: number;
}

/** What the drawing from behind the cue shows. Lengths in m, angles in rad, right +. */
export interface ShooterScene {
  readonly ballRadiusM: number;
  readonly distanceM: number;
  readonly cutRad: number;
  /** The ruler's zero: the centre of this ball. */
  readonly lead: AimMark;
  readonly tip: TipOnBall;
  /** Null while there is no answer. */
  readonly marks: LineMarks | null;
  /** The aims between which the ball still goes; null while they are not known. */
  readonly bandRad: { readonly low: number; readonly high: number } | null;
  /** The aims within one standard deviation of the one told; null while that is not known. */
  readonly sureRad: { readonly low: number; readonly high: number } | null;
  /** A shot set aside: its lines and its tip; null where there is none. */
  readonly held: (LineMarks & { readonly tip: TipOnBall }) | null;
}
