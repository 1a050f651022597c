import type { Shot, SolveAim } from '../engine/direct/shot';
import { squirtAngle } from '../engine/impacts/strike';
import type { Kit } from '../engine/kit/kit';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import { thrownAngleRad } from './thrown-angle';

/** What a kit does, in angles a player can picture; null where the example shot has no answer. */
export interface KitEffects {
  /** How far the cue ball squirts at half a radius of side, rad, unsigned. */
  readonly squirtRad: number;
  /** How far a soft shot of {@link SWERVE_OVER_M} with side and the cue slightly raised swerves, rad, unsigned. */
  readonly swerveRad: number | null;
  /** How far a soft half-ball hit without side is thrown, rad, unsigned. */
  readonly throwRad: number | null;
}

const HALF_BALL_RAD = 30 * RAD_PER_DEG;

/** How long that soft shot is, m. */
export const SWERVE_OVER_M = 1;

const SWERVE_EXAMPLE: Shot = {
  distanceM: SWERVE_OVER_M,
  cutRad: 0,
  side: 0.4,
  height: 0,
  elevationRad: 5 * RAD_PER_DEG,
  speedMps: 1,
};

const THROW_EXAMPLE: Shot = {
  distanceM: 0.3,
  cutRad: HALF_BALL_RAD,
  side: 0,
  height: 0,
  elevationRad: 0,
  speedMps: 1,
};

/** Works the example shots out with a kit. */
export function kitEffects(kit: Kit, solve: SolveAim): KitEffects {
  const swerve = solve(SWERVE_EXAMPLE, kit);
  const thrown = solve(THROW_EXAMPLE, kit);
  const thrownRad = thrown.ok ? thrownAngleRad(thrown) : null;
  return {
    squirtRad: squirtAngle(0.5, kit.massRatio),
    swerveRad: swerve.ok ? Math.abs(swerve.parts.swerveRad) : null,
    throwRad: thrownRad === null ? null : Math.abs(thrownRad),
  };
}
