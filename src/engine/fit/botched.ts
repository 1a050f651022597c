/**
 * Now and then a shot is botched: a slip of the tip, a diamond miscounted. A shot counts as good
 * with its own spread, or, now and then, as botched with a much wider one; the data say which.
 */
export interface Botching {
  /** Share of shots expected to be botched. */
  readonly share: number;
  /** By how much a botched shot strays further. */
  readonly widening: number;
}

/** One shot in twenty, straying ten times as far: our guess; only its order matters. */
export const SELDOM: Botching = { share: 0.05, widening: 10 };
/** For a first look from far off, where good shots too seem wide of the mark. */
export const OFTEN: Botching = { share: 0.4, widening: 5 };

export interface Judged {
  /** Minus the logarithm of the likelihood, less a constant. */
  readonly cost: number;
  /** What is left of the shot's weight, 1 for a good one. */
  readonly weight: number;
  /** How likely it is that the shot was good. */
  readonly goodShare: number;
}

/**
 * Judges a shot by its squares, a chi-square of that many readings if it is good. Source: mixture
 * of two normal laws, as for contaminated data (Tukey 1960, from memory).
 */
export function judged(squares: number, readings: number, { share, widening }: Botching): Judged {
  const wide = widening * widening;
  const good = Math.log(1 - share) - squares / 2;
  const bad = Math.log(share) - readings * Math.log(widening) - squares / (2 * wide);
  const top = Math.max(good, bad);
  const cost = -top - Math.log(Math.exp(good - top) + Math.exp(bad - top));
  const goodShare = Math.exp(good + cost);
  return { cost, weight: goodShare + (1 - goodShare) / wide, goodShare };
}
