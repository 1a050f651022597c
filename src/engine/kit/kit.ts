/**
 * The numbers of one cue, cloth, ball set and bed. Everything here can one day be measured at a
 * table; until then the defaults below stand in, and whoever shows them must say so.
 */

/** Ball-on-ball friction coefficient as a function of slip speed u (m/s): μ(u) = a + b·e^(−c·u). */
export interface BallFriction {
  readonly a: number;
  readonly b: number;
  /** s/m */
  readonly c: number;
}

/** How the bed tilts. Dimensionless rise over run. */
export interface BedSlope {
  /** + where the bed falls away from the shooter, along the straight line. */
  readonly alongM_per_M: number;
  /** + where the bed falls to the shooter's right. */
  readonly rightM_per_M: number;
}

/** The numbers of a table's cushions; how restitution and speed go together: `restitutionAt`. */
export interface Cushion {
  /** e at gentle speeds: the cushion gives back e² of the work done on it. */
  readonly restitution: number;
  /** How much of e every further m/s takes, s/m. */
  readonly lossPerMps: number;
  /** The speed from which on it does, m/s: level, and square to the rail. */
  readonly lossFromMps: number;
  /** Friction between ball and cushion, μ. */
  readonly friction: number;
  /** Height of the nose over the bed, as a share of the ball's radius. */
  readonly noseHeight: number;
}

export interface Kit {
  /** Cue-ball mass over the effective end mass of the cue, m/m_e. Larger means less squirt. */
  readonly massRatio: number;
  /** Cloth friction while the ball slides, μ_s. */
  readonly slideFriction: number;
  /** Rolling deceleration over g, μ_r. */
  readonly rollFriction: number;
  /** Rate at which spin about the vertical dies on the cloth, rad/s². */
  readonly spinDecayRadS2: number;
  /** Normal restitution between balls, e_b. */
  readonly ballRestitution: number;
  readonly ballFriction: BallFriction;
  /** Share of its downward speed with which a ball comes back off the bed, e_bed. */
  readonly bedRestitution: number;
  readonly ballRadiusM: number;
  /** Radius of the tip's dome. */
  readonly tipRadiusM: number;
  readonly bedSlope: BedSlope;
  /** Cue-ball mass over object-ball mass; both have the same radius. */
  readonly cueBallMassRatio: number;
  readonly cushion: Cushion;
}

/**
 * A pool table's. Sources: restitution and friction, Mathavan, Jackson and Parkin, Proc. IMechE C
 * 224(9):1863 (2010), measured on a snooker table; nose at 0.635 of the ball's diameter, mid-way of
 * the WPA equipment specification (0.625-0.645). The loss at speed and where it starts: matched to
 * the square rebounds of the same authors, Am. J. Phys. 77:788 (2009), a curve that is known here
 * second-hand; up to 2.5 m/s their later paper needs no loss.
 */
export const DEFAULT_CUSHION: Cushion = {
  restitution: 0.98,
  lossPerMps: 0.085,
  lossFromMps: 2,
  friction: 0.14,
  noseHeight: 1.27,
};

/**
 * An ordinary maple cue on club cloth with clean pool balls.
 *
 * Sources: ball radius, WPA equipment specification (2¼ in). Ball friction, a fit to Marlow 1995
 * (from memory). Slide and roll friction, spin decay, ball and bed restitution: from memory of the
 * literature, mid-range. massRatio 22 gives about 2.5° of squirt at half a radius of side
 * (common practice, no source). Tip dome of a small coin (common practice, no source).
 */
export const DEFAULT_KIT: Kit = {
  massRatio: 22,
  slideFriction: 0.2,
  rollFriction: 0.01,
  spinDecayRadS2: 10,
  ballRestitution: 0.95,
  ballFriction: { a: 0.00995, b: 0.108, c: 1.088 },
  bedRestitution: 0.5,
  ballRadiusM: 0.028575,
  tipRadiusM: 0.0095,
  bedSlope: { alongM_per_M: 0, rightM_per_M: 0 },
  cueBallMassRatio: 1,
  cushion: DEFAULT_CUSHION,
};

/** Whether the bed is level, so that a path is the same for every aim, only turned. */
export function isLevel(kit: Kit): boolean {
  return kit.bedSlope.alongM_per_M === 0 && kit.bedSlope.rightM_per_M === 0;
}
