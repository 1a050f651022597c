import { cholesky, choleskySolve } from './cholesky';
import { dot } from './dot';
import { clamped, diagonalOf, freeVariables, pulledVariables, type Valley } from './valley';

/** Makes a degenerate curvature definite: relative to its diagonal. */
const TINY_DAMPING = 1e-10;

/**
 * Where the damped step leads within the box. Variables that would leave it stop on their bounds, and
 * the others are worked out anew with those there. Null where the parabola has no least place.
 */
export function boundedTrial(valley: Valley, damping: number): number[] | null {
  const { at, gradient, curvature } = valley;
  let trial: readonly number[] = at;
  let free = freeVariables(valley);
  // Each round but the last stops a variable.
  for (let round = 0; round <= at.length; round++) {
    const moved = trial.map((value, i) => value - (at[i] ?? 0));
    const slope = gradient.map((value, i) => value + dot(curvature[i] ?? [], moved));
    const step = dampedStep({ ...valley, gradient: slope }, free, damping);
    if (step === null) return null;
    const wanted = trial.map((value, i) => value + (step[i] ?? 0));
    const inside = clamped(wanted, valley);
    const still = free.filter((i) => wanted[i] === inside[i]);
    if (still.length === free.length) return inside;
    trial = trial.map((value, i) => (still.includes(i) ? value : (inside[i] ?? value)));
    free = still;
  }
  return null;
}

/**
 * The step to where the parabola is least, with no more damping than it takes and the box left aside
 * but for the variables that a bound holds back; null where the parabola does not tell.
 */
export function wholeStep(valley: Valley): number[] | null {
  const now = { ...valley, stiffness: diagonalOf(valley.curvature) };
  const free = freeVariables(now);
  if (!pulledVariables(now).every((i) => free.includes(i))) return null;
  return dampedStep(now, free, 0) ?? dampedStep(now, free, TINY_DAMPING);
}

/**
 * The step of the free variables to where the parabola is least, each held back by the damping times
 * its stiffness; 0 for the others. Null where the parabola has no such place.
 */
function dampedStep(
  { gradient, curvature, stiffness }: Valley,
  free: readonly number[],
  damping: number,
): number[] | null {
  const damped = free.map((i) =>
    free.map((j) => (curvature[i]?.[j] ?? 0) + (i === j ? damping * (stiffness[i] ?? 0) : 0)),
  );
  const factor = cholesky(damped);
  if (factor === null) return null;
  const solved = choleskySolve(
    factor,
    free.map((i) => -(gradient[i] ?? 0)),
  );
  const step = gradient.map(() => 0);
  for (const [nth, i] of free.entries()) step[i] = solved[nth] ?? 0;
  return step;
}
