import { RAD_PER_DEG } from '../numerics/angle';
import type { Range } from '../numerics/range';
import { STROKE_RANGES } from '../stroke/stroke';
import type { Shot } from './shot';

const { aimRad: _aim, ...OF_A_STROKE } = STROKE_RANGES;

/**
 * What the engine accepts of a shot. The distance spans the diagonal of a snooker table (3.569 m by
 * 1.778 m, WPBSA).
 */
export const INPUT_RANGES = {
  distanceM: { min: 0.005, max: 4.1 },
  cutRad: { min: -90 * RAD_PER_DEG, max: 90 * RAD_PER_DEG },
  ...OF_A_STROKE,
  objectDistanceM: { min: 0.001, max: 5 },
} as const satisfies Record<keyof Shot, Range>;

/**
 * Thinner cuts than this are refused, whatever the side (our choice). So near a graze the balls share
 * less than 1/700 of their width, and friction alone decides whether the object ball leaves that way:
 * it throws it by up to 4° (Marlow 1995, from memory), and hardly moves it.
 */
export const THINNEST_CUT_RAD = 87 * RAD_PER_DEG;
