import type { AimAnswer, Shot, SolveAim } from '../engine/direct/shot';
import type { Kit } from '../engine/kit/kit';
import { MISCUE_LIMIT } from '../engine/stroke/miscue-limit';

/** Something to know before playing the shot, most pressing first. */
export type ShotWarning =
  /** Farther than from corner to corner of the table in play. */
  | { readonly kind: 'beyond-table' }
  | { readonly kind: 'near-miscue'; readonly contact: number }
  | { readonly kind: 'raised-cue' }
  /** So thin that a hair more or less decides. */
  | { readonly kind: 'thin-cut' }
  | {
      readonly kind: 'speed-sensitive';
      /** Largest change of the aim, either way. */
      readonly changeRad: number;
      readonly changeM: number;
    }
  /** A little softer or firmer and no aim does it. */
  | { readonly kind: 'speed-edge'; readonly towards: 'softer' | 'firmer' }
  | { readonly kind: 'swerve-leads' };

/** Share of the miscue limit beyond which a contact is near it. */
const NEAR_LIMIT = 0.9;
/** From here a cue can dig into the cloth or send a ball off the table (practice, no source). */
export const RAISED_CUE_RAD = (10 * Math.PI) / 180;
/** From here a cut hardly forgives anything (common practice, no source). */
const THIN_CUT_RAD = (75 * Math.PI) / 180;
/** How well a good stroke repeats its speed. */
const SPEED_SHARE = 0.05;
const SENSITIVE_M = 0.004;
const SENSITIVE_RAD = (0.2 * Math.PI) / 180;
/** Smaller curving than this cannot be seen, so it leads nothing. */
const LEAST_SWERVE_RAD = (0.1 * Math.PI) / 180;
/** From corner to corner of a bed twice as long as wide, in its lengths (WPA, equipment). */
const DIAGONAL_LENGTHS = Math.hypot(1, 1 / 2);
/** A bound typed in degrees must not be missed by what conversion leaves. Relative. */
const ROUNDING = 1e-9;

/**
 * What to warn of about a shot that has an answer.
 *
 * @param tableLengthM nose to nose, of the table in play
 */
export function shotWarnings(
  shot: Shot,
  kit: Kit,
  answer: AimAnswer,
  solve: SolveAim,
  tableLengthM: number,
): readonly ShotWarning[] {
  const contact = Math.hypot(shot.side, shot.height);
  const { squirtRad, swerveRad } = answer.parts;
  const swerve = Math.abs(swerveRad);
  const warnings: (ShotWarning | null | false)[] = [
    shot.distanceM > DIAGONAL_LENGTHS * tableLengthM && { kind: 'beyond-table' },
    shot.elevationRad >= RAISED_CUE_RAD * (1 - ROUNDING) && { kind: 'raised-cue' },
    Math.abs(shot.cutRad) > THIN_CUT_RAD * (1 + ROUNDING) && { kind: 'thin-cut' },
    speedWarning(shot, kit, answer, solve),
    swerve > Math.abs(squirtRad) && swerve > LEAST_SWERVE_RAD && { kind: 'swerve-leads' },
    contact > NEAR_LIMIT * MISCUE_LIMIT * (1 + ROUNDING) && { kind: 'near-miscue', contact },
  ];
  return warnings.filter((warning) => warning !== null && warning !== false);
}

function speedWarning(
  shot: Shot,
  kit: Kit,
  answer: AimAnswer,
  solve: SolveAim,
): ShotWarning | null {
  let changeRad = 0;
  let changeM = 0;
  for (const towards of ['softer', 'firmer'] as const) {
    const factor = towards === 'softer' ? 1 - SPEED_SHARE : 1 + SPEED_SHARE;
    const other = solve({ ...shot, speedMps: shot.speedMps * factor }, kit);
    if (!other.ok) return { kind: 'speed-edge', towards };
    changeRad = Math.max(changeRad, Math.abs(other.aimRad - answer.aimRad));
    changeM = Math.max(changeM, Math.abs(other.aimOffsetM - answer.aimOffsetM));
  }
  const sensitive = changeM > SENSITIVE_M || changeRad > SENSITIVE_RAD;
  return sensitive ? { kind: 'speed-sensitive', changeRad, changeM } : null;
}
