/** Where a reading lies beside what was expected of it. */
export interface ResidualDot {
  /** (read − expected) / sd; right or more is +. */
  readonly deviations: number;
  /** Along the track, 0 to 1; one beyond an end lies at it. */
  readonly at: number;
  /** It lies further out than the track goes. */
  readonly isBeyond: boolean;
}

/** The track goes so many standard deviations either way. */
const TRACK_SD = 4;
/** Nineteen readings of twenty lie within so many. */
const USUAL_SD = 2;

/** The usual band, as shares of the track. */
export const USUAL_BAND = {
  from: 0.5 - USUAL_SD / TRACK_SD / 2,
  to: 0.5 + USUAL_SD / TRACK_SD / 2,
} as const;

/** Places a reading by its distance from its expectation; null where there is nothing to compare. */
export function residualDot(read: number, expected: number | null, sd: number): ResidualDot | null {
  if (expected === null || !(sd > 0)) return null;
  const deviations = (read - expected) / sd;
  const share = 0.5 + deviations / TRACK_SD / 2;
  return {
    deviations,
    at: Math.min(1, Math.max(0, share)),
    isBeyond: Math.abs(deviations) > TRACK_SD,
  };
}
