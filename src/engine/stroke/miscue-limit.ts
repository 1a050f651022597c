import { length } from '../numerics/length';

/**
 * How far from the centre a chalked tip can strike before it slips, as a fraction of the ball's
 * radius. Common practice, no source; a tip friction of 0.58 gives the same by μ/√(1+μ²).
 */
export const MISCUE_LIMIT = 0.5;

/** Room for decimals that do not add up in binary (0.3 and 0.4 make exactly the limit). Relative. */
const ROUNDING = 1e-9;

/** Whether the tip would slip off at this contact (fractions of R). */
export function isBeyondMiscue(side: number, height: number): boolean {
  return length(side, height) > MISCUE_LIMIT * (1 + ROUNDING);
}
