/** A stroke to look with, all but where the cue points and how far it must be raised. */
export interface BaseStroke {
  readonly side: number;
  readonly height: number;
  readonly speedMps: number;
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
