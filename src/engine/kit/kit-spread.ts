import type { Kit } from './kit';
import { BALL_FRICTION_RANGES, BED_SLOPE_RANGE, KIT_RANGES } from './kit-ranges';

/**
 * What is not known of a kit, one standard deviation each. Slopes in m/m; all else as a share of
 * the value (of its logarithm, for nothing here can turn negative). `ballFriction` stands for its
 * whole curve.
 */
export interface KitSpread {
  readonly massRatio: number;
  readonly slideFriction: number;
  readonly rollFriction: number;
  readonly spinDecayRadS2: number;
  readonly ballRestitution: number;
  readonly ballFriction: number;
  readonly bedRestitution: number;
  readonly cueBallMassRatio: number;
  readonly bedSlopeAlong: number;
  readonly bedSlopeRight: number;
}

export type KitQuantity = keyof KitSpread;

/** The quantities, in the order in which ties are told. */
export const KIT_QUANTITIES: readonly KitQuantity[] = [
  'massRatio',
  'slideFriction',
  'ballFriction',
  'rollFriction',
  'spinDecayRadS2',
  'ballRestitution',
  'bedRestitution',
  'cueBallMassRatio',
  'bedSlopeAlong',
  'bedSlopeRight',
];

/**
 * How the errors of the quantities go together, row by row in the order of {@link KIT_QUANTITIES}:
 * 1 on the diagonal. Measurements tie quantities to each other; unmeasured ones are independent.
 */
export type KitCorrelation = readonly (readonly number[])[];

/** Standard deviation of the logarithm, for a range taken as the central 95 %. */
function spreadOf(low: number, high: number): number {
  return Math.log(high / low) / (2 * 1.96);
}

/**
 * What is not known of a kit nobody has measured. Ranges: m/m_e 12 to 50, μ_s 0.15 to 0.40, μ_r
 * 0.005 to 0.016, spin decay 5 to 22 rad/s², e_b 0.92 to 0.98, e_bed 0.4 to 0.7, all from memory of
 * the literature; a cue ball up to a tenth heavy. Ball friction within a factor of 1.6 either way,
 * clean to dirty: common practice, no source. Slopes: what the WPA's flatness allows, 0.2 mm/m.
 */
export const UNMEASURED: KitSpread = {
  massRatio: spreadOf(12, 50),
  slideFriction: spreadOf(0.15, 0.4),
  rollFriction: spreadOf(0.005, 0.016),
  spinDecayRadS2: spreadOf(5, 22),
  ballRestitution: spreadOf(0.92, 0.98),
  ballFriction: spreadOf(1 / 1.6, 1.6),
  bedRestitution: spreadOf(0.4, 0.7),
  cueBallMassRatio: spreadOf(0.97, 1.05),
  bedSlopeAlong: 0.0002,
  bedSlopeRight: 0.0002,
};

/** A kit with one of its quantities moved by so many standard deviations, kept within its range. */
export function kitMoved(kit: Kit, spread: KitSpread, quantity: KitQuantity, sds: number): Kit {
  const by = spread[quantity] * sds;
  if (quantity === 'ballFriction') return withBallFriction(kit, Math.exp(by));
  if (quantity === 'bedSlopeAlong') return withSlope(kit, by, 0);
  if (quantity === 'bedSlopeRight') return withSlope(kit, 0, by);
  const { min, max } = KIT_RANGES[quantity];
  return { ...kit, [quantity]: clamp(kit[quantity] * Math.exp(by), min, max) };
}

function withBallFriction(kit: Kit, factor: number): Kit {
  const { a, b, c } = kit.ballFriction;
  const ballFriction = {
    a: clamp(a * factor, 0, BALL_FRICTION_RANGES.a.max),
    b: clamp(b * factor, 0, BALL_FRICTION_RANGES.b.max),
    c,
  };
  return { ...kit, ballFriction };
}

function withSlope(kit: Kit, along: number, right: number): Kit {
  const { min, max } = BED_SLOPE_RANGE;
  const { alongM_per_M, rightM_per_M } = kit.bedSlope;
  const bedSlope = {
    alongM_per_M: clamp(alongM_per_M + along, min, max),
    rightM_per_M: clamp(rightM_per_M + right, min, max),
  };
  return { ...kit, bedSlope };
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
