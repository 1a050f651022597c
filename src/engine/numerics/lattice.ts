/**
 * Points that fill a unit cube evenly: the n-th has coordinates frac(shift_k + n·φ^−k), φ being the
 * root of x^(d+1) = x + 1. Source: Roberts' generalised golden ratio, 2018 (from memory).
 */
export interface Lattice {
  readonly steps: readonly number[];
}

const ROUNDS = 60;

/** @param dimensions d, at least 1 */
export function latticeOf(dimensions: number): Lattice {
  let root = 2;
  for (let round = 0; round < ROUNDS; round++) root = (1 + root) ** (1 / (dimensions + 1));
  return { steps: Array.from({ length: dimensions }, (_, index) => root ** -(index + 1) % 1) };
}

/**
 * Coordinate `dimension` of point n, in (0, 1), for the copy of the lattice moved by `shift`: copies
 * with different whole shifts are as good as independent.
 */
export function latticePoint(
  lattice: Lattice,
  n: number,
  dimension: number,
  shift: number,
): number {
  const step = lattice.steps[dimension];
  if (step === undefined) throw new RangeError(`the lattice has no dimension ${dimension}`);
  // Each copy starts elsewhere in each dimension: multiples of two unrelated irrationals.
  const start = shift * Math.SQRT2 * (dimension + 1) + shift * Math.E;
  const at = (0.5 + start + n * step) % 1;
  return Math.min(1 - 1e-12, Math.max(1e-12, at));
}
