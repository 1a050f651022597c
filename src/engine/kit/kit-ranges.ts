import { isWithin, type Range } from '../numerics/range';
import { CUSHION_RANGES } from './cushion';
import type { Kit } from './kit';

/**
 * What the engine accepts of a kit. Much wider than what a table shows (see the spreads in
 * physics of the trade: slide friction 0.15-0.40, roll friction 0.005-0.016, both from memory), so
 * that idealised kits, such as a cue without end mass or balls without friction, can be asked too.
 */
export const KIT_RANGES = {
  massRatio: { min: 2, max: Number.POSITIVE_INFINITY },
  slideFriction: { min: 0.02, max: 1 },
  rollFriction: { min: 0.001, max: 0.1 },
  spinDecayRadS2: { min: 0, max: 100 },
  ballRestitution: { min: 0.5, max: 1 },
  bedRestitution: { min: 0, max: 0.95 },
  ballRadiusM: { min: 0.02, max: 0.04 },
  tipRadiusM: { min: 0, max: 0.03 },
  cueBallMassRatio: { min: 0.7, max: 1.5 },
} as const satisfies Record<Exclude<keyof Kit, 'ballFriction' | 'bedSlope' | 'cushion'>, Range>;

/** μ(u) = a + b·e^(−c·u): every value of it stays below 1. */
export const BALL_FRICTION_RANGES = {
  a: { min: 0, max: 0.5 },
  b: { min: 0, max: 0.5 },
  c: { min: 0, max: 20 },
} as const satisfies Record<keyof Kit['ballFriction'], Range>;

/** 10 mm a metre: twenty times what the WPA allows along a nine-foot bed. */
export const BED_SLOPE_RANGE: Range = { min: -0.01, max: 0.01 };

/** One quantity of a kit that the engine cannot take, and what it could. */
export interface KitProblem {
  /** Dotted where the quantity is nested: `ballFriction.a`. */
  readonly quantity: string;
  readonly value: unknown;
  readonly range: Range;
}

/** The first quantity outside its range, or null when the engine accepts the kit. */
export function findKitProblem(kit: Kit): KitProblem | null {
  return (
    findOutside('', kit, KIT_RANGES) ??
    findOutside('ballFriction.', kit.ballFriction, BALL_FRICTION_RANGES) ??
    findOutside('bedSlope.', kit.bedSlope, {
      alongM_per_M: BED_SLOPE_RANGE,
      rightM_per_M: BED_SLOPE_RANGE,
    }) ??
    findOutside('cushion.', kit.cushion, CUSHION_RANGES)
  );
}

function findOutside<K extends string>(
  prefix: string,
  holder: Readonly<Record<NoInfer<K>, unknown>>,
  ranges: Readonly<Record<K, Range>>,
): KitProblem | null {
  for (const key in ranges) {
    if (!isWithin(ranges[key], holder[key])) {
      return { quantity: prefix + key, value: holder[key], range: ranges[key] };
    }
  }
  return null;
}
