import { cholesky, choleskySolve } from '../numerics/cholesky';
import { dot } from '../numerics/dot';
import { NO_STRAYS, type ShotResiduals, STRAYS, type Strays, withAt } from './shot-residuals';

/**
 * What one shot says at some values of the unknowns, with the strays of its stroke worked out: they
 * are as likely as can be given the readings. Shot by shot, that is the errors-in-variables problem
 * with the strays eliminated; where the readings bend little within the strays it is exact.
 */
export interface ShotEvidence {
  /** Sum of the squares of residuals and strays: under the right kit, a chi-square of the readings. */
  readonly squares: number;
  readonly strays: Strays;
  readonly residuals: readonly number[];
  /** Of each reading, how its prediction changes with each stray, in standard deviations of it. */
  readonly perStray: readonly (readonly number[])[];
}

const MAX_ROUNDS = 12;
const MAX_HALVINGS = 8;
/** Squares settled to this are settled: nobody can tell a kit by so little. */
const SETTLED = 1e-7;
/** Step for derivatives, in deviations of the stray: a shorter one meets a cushion's increments. */
const STEP = 0.15;

/** Where to begin: strays found at other values of the unknowns not far off, and the slopes there. */
export type EarlierEvidence = Pick<ShotEvidence, 'strays' | 'perStray'>;

/**
 * @param earlier makes it cheaper; the answer is the same, as far as settled goes
 * @returns null where the kit would leave nothing to read, however the stroke strayed nearby
 */
export function shotEvidence(
  shot: ShotResiduals,
  unknowns: readonly number[],
  earlier?: EarlierEvidence,
): ShotEvidence | null {
  const atStrays: AtStrays = (strays) => shot.at(unknowns, strays);
  let strays = earlier?.strays ?? NO_STRAYS;
  let residuals = atStrays(strays);
  if (residuals === null) return earlier ? shotEvidence(shot, unknowns) : null;
  let perStray = earlier?.perStray ?? slopesPerStray(atStrays, strays, residuals);
  let squares = sumOfSquares(residuals) + sumOfSquares(strays);
  let isFresh = earlier === undefined;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const wanted = likeliestStrays(residuals, perStray, strays);
    const better = stepTowards(atStrays, strays, wanted, squares);
    const gain = better === null ? 0 : squares - better.squares;
    if (better !== null) {
      perStray = alongSecant(perStray, strays, residuals, better);
      ({ strays, residuals, squares } = better);
    }
    if (gain > SETTLED) isFresh = false;
    else if (isFresh) break;
    else [perStray, isFresh] = [slopesPerStray(atStrays, strays, residuals), true];
  }
  return { squares, strays, residuals, perStray };
}

/** The residuals at some strays, the unknowns held. */
export type AtStrays = (strays: Strays) => readonly number[] | null;

/**
 * The slopes, changed as little as makes them tell what the step did: across a fold those of either
 * side lead to the other and back. Source: Broyden 1965 (from memory).
 */
function alongSecant(
  perStray: readonly (readonly number[])[],
  from: Strays,
  before: readonly number[],
  { strays, residuals }: Pick<ShotEvidence, 'strays' | 'residuals'>,
): number[][] {
  const step = strays.map((value, index) => value - (from[index] ?? 0));
  const square = sumOfSquares(step);
  return perStray.map((row, at) => {
    const untold = (before[at] ?? 0) - (residuals[at] ?? 0) - dot(row, step);
    return row.map((slope, index) => slope + (untold * (step[index] ?? 0)) / square);
  });
}

/** A whole Gauss-Newton step, or as much of it as helps; null where none does. */
function stepTowards(at: AtStrays, from: Strays, to: Strays, squares: number) {
  let share = 1;
  for (let halving = 0; halving < MAX_HALVINGS; halving++, share /= 4) {
    const strays = from.map((value, index) => value + share * ((to[index] ?? value) - value));
    const residuals = at(strays);
    if (residuals === null) continue;
    const now = sumOfSquares(residuals) + sumOfSquares(strays);
    if (now < squares) return { strays, residuals, squares: now };
    if (now - squares < SETTLED) return null;
  }
  return null;
}

/** Of each reading, the change of its prediction per stray. */
export function slopesPerStray(
  at: AtStrays,
  strays: Strays,
  residuals: readonly number[],
): number[][] {
  const columns = Array.from({ length: STRAYS }, (_, index) => {
    const here = strays[index] ?? 0;
    const [less, more] = [-STEP, STEP].map((step) => at(withAt(strays, index, here + step)));
    return residuals.map((value, row) => slopeOf(less?.[row], value, more?.[row]));
  });
  return residuals.map((_, row) => columns.map((column) => column[row] ?? 0));
}

/** Of the prediction, which is the residual's negative; one-sided where one side has no reading. */
function slopeOf(less: number | undefined, here: number, more: number | undefined): number {
  if (less !== undefined && more !== undefined) return (less - more) / (2 * STEP);
  if (more !== undefined) return (here - more) / STEP;
  return less === undefined ? 0 : (less - here) / STEP;
}

/** J'(1 + JJ')⁻¹(r + Je): where residuals and strays together are least, on the straight line. */
function likeliestStrays(
  residuals: readonly number[],
  perStray: readonly (readonly number[])[],
  strays: Strays,
): Strays {
  const wanted = residuals.map((value, row) => value + dot(perStray[row] ?? [], strays));
  const weighted = solveSpread(perStray, wanted);
  return NO_STRAYS.map((_, index) =>
    perStray.reduce((sum, row, at) => sum + (row[index] ?? 0) * (weighted[at] ?? 0), 0),
  );
}

/** The covariance of the readings that strays and reading errors make together: 1 + JJ'. */
export function readingCovariance(perStray: readonly (readonly number[])[]): number[][] {
  return perStray.map((row, i) => perStray.map((other, j) => (i === j ? 1 : 0) + dot(row, other)));
}

/** The logarithm of the determinant of {@link readingCovariance}: how wide the readings spread. */
export function logSpread(perStray: readonly (readonly number[])[]): number {
  const factor = cholesky(readingCovariance(perStray)) ?? [];
  return factor.reduce((sum, row, index) => sum + 2 * Math.log(row[index] ?? 1), 0);
}

/** Solves with {@link readingCovariance}, which is positive definite by its form. */
export function solveSpread(
  perStray: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] {
  const factor = cholesky(readingCovariance(perStray));
  return factor === null ? right : choleskySolve(factor, right);
}

export function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}
