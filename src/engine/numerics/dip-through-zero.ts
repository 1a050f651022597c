/** Golden-section share of the smaller part. */
const SMALLER = (3 - Math.sqrt(5)) / 2;
const MAX_ROUNDS = 40;

/**
 * Where a continuous f that has the same sign at a and b has the other one in between.
 *
 * Narrows to the least |f| by golden sections, which finds it where |f| has one low. Gives up as
 * soon as zero is too deep: further below the least of f than that is below the bracket's ends.
 *
 * @returns a point at which f has the other sign, or null where f does not reach beyond zero
 */
export function dipThroughZero(
  f: (x: number) => number,
  a: number,
  fa: number,
  b: number,
  fb: number,
): number | null {
  const sign = fa > 0 ? 1 : -1;
  const depth = (x: number) => sign * f(x);
  let [low, atLow, high, atHigh] = [a, sign * fa, b, sign * fb];
  let [left, right] = [low + SMALLER * (high - low), high - SMALLER * (high - low)];
  let [atLeft, atRight] = [depth(left), depth(right)];
  for (let round = 0; round < MAX_ROUNDS; round++) {
    if (atLeft < 0) return left;
    if (atRight < 0) return right;
    const least = Math.min(atLow, atLeft, atRight, atHigh);
    if (!(2 * least < Math.max(atLow, atHigh))) return null;
    if (atLeft < atRight) {
      [high, atHigh, right, atRight] = [right, atRight, left, atLeft];
      left = low + SMALLER * (high - low);
      atLeft = depth(left);
    } else {
      [low, atLow, left, atLeft] = [left, atLeft, right, atRight];
      right = high - SMALLER * (high - low);
      atRight = depth(right);
    }
  }
  return null;
}
