/** A figure and one standard deviation, in one unit. */
export interface Measured {
  readonly value: number;
  readonly sd: number;
}

/** From one share of a track to another, 0 to 1, and the middle between. */
export interface Interval {
  readonly from: number;
  readonly at: number;
  readonly to: number;
}

/** What was assumed and what is known now, on one track. */
export interface SurenessBar {
  readonly before: Interval;
  readonly now: Interval;
}

/** Standard deviations that a track keeps beyond the middle of what it shows. */
const REACH_SD = 1.6;

/** Lays two figures with their standard deviations along one track that holds both. */
export function layOutSureness(before: Measured, now: Measured): SurenessBar {
  const low = Math.min(before.value - REACH_SD * before.sd, now.value - REACH_SD * now.sd);
  const high = Math.max(before.value + REACH_SD * before.sd, now.value + REACH_SD * now.sd);
  const share = (value: number) => (high > low ? (value - low) / (high - low) : 0.5);
  const interval = ({ value, sd }: Measured): Interval => ({
    from: share(value - sd),
    at: share(value),
    to: share(value + sd),
  });
  return { before: interval(before), now: interval(now) };
}

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
