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
