import type { Range } from '../model/range';
import type { Shot } from './shot';

const DEG = Math.PI / 180;

/**
 * What the engine accepts of a shot. The lower speed is a ball that barely leaves the tip; the
 * upper is above the nine-ball break of Onoda 1989 (9.8-11.6 m/s). The distance spans the
 * diagonal of a snooker table (3.569 m by 1.778 m, WPBSA). The steepest elevation is a massé's.
 */
export const INPUT_RANGES = {
  distanceM: { min: 0.005, max: 4.1 },
  cutRad: { min: -90 * DEG, max: 90 * DEG },
  side: { min: -1, max: 1 },
  height: { min: -1, max: 1 },
  elevationRad: { min: 0, max: 75 * DEG },
  speedMps: { min: 0.02, max: 13 },
  objectDistanceM: { min: 0.001, max: 5 },
} as const satisfies Record<keyof Shot, Range>;

/**
 * Thinner cuts than this are refused, whatever the side (our choice). So near a graze the balls share
 * less than 1/700 of their width, and friction alone decides whether the object ball leaves that way:
 * it throws it by up to 4° (Marlow 1995, from memory), and hardly moves it.
 */
export const THINNEST_CUT_RAD = 87 * DEG;

/** The aims that can be asked about, rad. */
export const AIM_RANGE: Range = { min: -90 * DEG, max: 90 * DEG };
