import { RAD_PER_DEG } from '../numerics/angle';

/** A stroke to look with, all but where the cue points and how far it must be raised. */
export interface BaseStroke {
  readonly side: number;
  readonly height: number;
  readonly speedMps: number;
  /** How far the cue is raised even where it need not be, rad; left out: no farther than it must be. */
  readonly raisedRad?: number;
}

/** Medium, firm, power and soft (common practice, no source): what a plain look is taken with first. */
const SPEEDS_MPS = [1.8, 2.8, 4.2, 1.2] as const;
/** Rolling at once, stunned or drawn, and in the middle: fractions of R. */
const HEIGHTS = [0, 0.35, -0.35] as const;
/** Side that changes what a cushion gives back. */
const SIDES = [0.3, -0.3] as const;

/** The likeliest first: all speeds in the middle of the ball, then high and low, then with side. */
export const BASE_STROKES: readonly BaseStroke[] = [
  ...SPEEDS_MPS.slice(0, 3).flatMap((speedMps) =>
    HEIGHTS.map((height) => ({ side: 0, height, speedMps })),
  ),
  ...SPEEDS_MPS.slice(3).map((speedMps) => ({ side: 0, height: 0, speedMps })),
  ...SPEEDS_MPS.slice(0, 2).flatMap((speedMps) =>
    SIDES.map((side) => ({ side, height: 0, speedMps })),
  ),
];

/**
 * A cue raised to jump a ball, or to curve round one (common practice, no source). These opened most
 * banks and kicks at balls that others hid.
 */
export const RAISED_STROKES: readonly BaseStroke[] = (
  [
    [30, 0, 4],
    [30, 0, 5],
    [35, 0, 3.5],
    [40, 0, 3],
    [40, 0.4, 3.2],
    [40, -0.4, 3.2],
  ] as const
).map(([raisedDeg, side, speedMps]) => ({
  side,
  height: 0,
  speedMps,
  raisedRad: raisedDeg * RAD_PER_DEG,
}));

/** All of them, as parts of a search name them by their place. */
export const STROKES: readonly BaseStroke[] = [...BASE_STROKES, ...RAISED_STROKES];
