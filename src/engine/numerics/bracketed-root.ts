/** How a root search ended. */
export interface RootFound {
  readonly x: number;
  readonly fx: number;
  readonly converged: boolean;
}

const MAX_ROUNDS = 120;

/**
 * A root of a continuous f between a and b, where f has opposite signs.
 *
 * Inverse quadratic steps where they are safe, halving elsewhere. Source: Chandrupatla, Advances in
 * Engineering Software 28:145 (1997) (from memory).
 *
 * @param xTolerance absolute: stops when the bracket is this narrow
 * @param fTolerance absolute: stops when f is this small
 */
export function bracketedRoot(
  f: (x: number) => number,
  a: number,
  fa: number,
  b: number,
  fb: number,
  xTolerance: number,
  fTolerance: number,
): RootFound {
  // Plain assignments throughout: nothing here is to be allocated.
  let x1 = a;
  let f1 = fa;
  let x2 = b;
  let f2 = fb;
  let x3 = a;
  let f3 = fa;
  let share = 0.5;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const x = x1 + share * (x2 - x1);
    const fx = f(x);
    if (fx > 0 === f1 > 0) {
      x3 = x1;
      f3 = f1;
    } else {
      x3 = x2;
      f3 = f2;
      x2 = x1;
      f2 = f1;
    }
    x1 = x;
    f1 = fx;
    const best = Math.abs(f1) < Math.abs(f2);
    const xBest = best ? x1 : x2;
    const fBest = best ? f1 : f2;
    const least = (xTolerance + 2 * Number.EPSILON * Math.abs(xBest)) / Math.abs(x2 - x1);
    if (Math.abs(fBest) <= fTolerance || least > 0.5) {
      return { x: xBest, fx: fBest, converged: true };
    }
    share = Math.min(1 - least, Math.max(least, nextShare(x1, f1, x2, f2, x3, f3)));
  }
  return { x: x1, fx: f1, converged: false };
}

function nextShare(x1: number, f1: number, x2: number, f2: number, x3: number, f3: number): number {
  const xi = (x1 - x2) / (x3 - x2);
  const phi = (f1 - f2) / (f3 - f2);
  const safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!safe) return 0.5;
  return (
    (f1 / (f2 - f1)) * (f3 / (f2 - f3)) +
    ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2))
  );
}
