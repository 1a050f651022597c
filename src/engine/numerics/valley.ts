import { dot } from './dot';

/** A parabola in many variables about a point, and the box that the variables may not leave. */
export interface Valley {
  readonly at: readonly number[];
  readonly gradient: readonly number[];
  readonly curvature: readonly (readonly number[])[];
  /** What a variable's damping is relative to; 0 where nothing ever told how far to move it. */
  readonly stiffness: readonly number[];
  readonly min: readonly number[];
  readonly max: readonly number[];
}

/** The variables with downhill on their own: not at their bottom, nor on a bound with it beyond. */
export function pulledVariables({ at, gradient, min, max }: Valley): number[] {
  return indices(at).filter((i) => {
    const slope = gradient[i] ?? 0;
    return slope > 0 ? at[i] !== min[i] : slope < 0 && at[i] !== max[i];
  });
}

/** The variables that a step may move: those with a stiffness, and no bound in the way downhill. */
export function freeVariables(valley: Valley): number[] {
  const { gradient, stiffness } = valley;
  const pulled = pulledVariables(valley);
  return indices(gradient).filter(
    (i) => (stiffness[i] ?? 0) > 0 && (gradient[i] === 0 || pulled.includes(i)),
  );
}

/** How much lower the parabola is at another point. */
export function predictedGain(
  { at, gradient, curvature }: Valley,
  there: readonly number[],
): number {
  const step = there.map((value, i) => value - (at[i] ?? 0));
  const bent = curvature.map((row) => dot(row, step));
  return -dot(gradient, step) - dot(bent, step) / 2;
}

/** The nearest point of the box. */
export function clamped(
  point: readonly number[],
  { min, max }: Pick<Valley, 'min' | 'max'>,
): number[] {
  return point.map((value, i) => Math.min(max[i] ?? value, Math.max(min[i] ?? value, value)));
}

export function diagonalOf(matrix: readonly (readonly number[])[]): number[] {
  return matrix.map((row, i) => row[i] ?? 0);
}

function indices(of: readonly number[]): number[] {
  return of.map((_, i) => i);
}
