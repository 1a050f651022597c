/** The first primes: their square roots are irrational and unrelated. */
const PRIMES = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71];

/**
 * Coordinate of a point of a lattice that fills a unit cube evenly, in (0, 1): the n-th point has
 * the fractional part of n·√p, p being the dimension's prime. Source: Richtmyer 1951 (from memory).
 *
 * @param copy copies with different numbers start elsewhere, and are as good as independent
 * @param dimension 0 to 19
 * @throws RangeError for any other dimension
 */
export function latticePoint(n: number, dimension: number, copy: number): number {
  const prime = PRIMES[dimension];
  if (prime === undefined) throw new RangeError(`the lattice has no dimension ${dimension}`);
  // A copy starts at a place of its own in each dimension: multiples of unrelated irrationals.
  const start = copy * (Math.E + dimension * Math.PI);
  const at = (start + (n + 0.5) * Math.sqrt(prime)) % 1;
  return Math.min(1 - 1e-12, Math.max(1e-12, at));
}
