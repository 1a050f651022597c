/**
 * Chance that a standard normal variable is below z, to 1.5e-7 absolute. Source: Abramowitz and
 * Stegun, Handbook of Mathematical Functions, 7.1.26 (from memory).
 */
export function normalBelow(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series =
    ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t;
  const tail = (series * Math.exp(-x * x)) / 2;
  return z > 0 ? 1 - tail : tail;
}

const A = [
  -3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2,
  -3.066479806614716e1, 2.506628277459239,
];
const B = [
  -5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1,
  -1.328068155288572e1, 1,
];
const C = [
  -7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734,
  4.374664141464968, 2.938163982698783,
];
const D = [7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416, 1];
const LOW = 0.02425;

/**
 * The z below which a standard normal variable lies with chance p in (0, 1), to 1.2e-9 relative.
 * Source: Acklam's rational approximation, 2003 (from memory).
 */
export function normalQuantile(p: number): number {
  if (p > 1 - LOW) return -normalQuantile(1 - p);
  if (p < LOW) {
    const q = Math.sqrt(-2 * Math.log(p));
    return polynomial(C, q) / polynomial(D, q);
  }
  const q = p - 0.5;
  return (q * polynomial(A, q * q)) / polynomial(B, q * q);
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, coefficient) => sum * x + coefficient, 0);
}
