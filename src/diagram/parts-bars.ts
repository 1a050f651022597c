/** A bar from one angle to another on a line with zero in its middle. */
export interface PartBar {
  /** Of the chart's width, 0 to 1. */
  readonly from: number;
  readonly to: number;
}

/**
 * Lays signed parts end to end, each bar starting where the last ended, so that the last ends at
 * their sum. Zero is in the middle; the farthest end reaches the edge.
 */
export function layOutParts(partsRad: readonly number[]): readonly PartBar[] {
  const ends = partsRad.map((_, i) =>
    partsRad.slice(0, i + 1).reduce((sum, part) => sum + part, 0),
  );
  const reach = Math.max(...ends.map(Math.abs), 1e-12);
  const share = (angleRad: number) => 0.5 + angleRad / reach / 2;
  return ends.map((end, i) => ({ from: share(ends[i - 1] ?? 0), to: share(end) }));
}
