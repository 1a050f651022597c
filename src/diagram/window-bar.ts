import type { Range } from '../engine/numerics/range';
import type { WindowEnd } from '../engine/room/windows';

/**
 * How a bar ends: where the ball goes wide, where something else stops it, or open where it runs on
 * beyond the track.
 */
export type BarEndKind = 'wide' | 'stopped' | 'open';

export interface BarEnd {
  /** Of the track's length, 0 to 1. */
  readonly at: number;
  readonly kind: BarEndKind;
}

/** A window on a track that spans the usual range of its input. */
export interface WindowBar {
  readonly low: BarEnd;
  readonly high: BarEnd;
}

/** A window found by search may leave the end of its track by this much. Relative to the track. */
const ROUNDING = 1e-6;
const WIDE: readonly WindowEnd['endedBy'][] = ['thin', 'full', 'left', 'right'];

/** Lays a window along a track. Both are in one unit. */
export function layOutWindowBar(
  { low, high }: { readonly low: WindowEnd; readonly high: WindowEnd },
  track: Range,
): WindowBar {
  return { low: endOf(low, track), high: endOf(high, track) };
}

function endOf({ value, endedBy }: WindowEnd, track: Range): BarEnd {
  const at = shareAlongTrack(value, track);
  const slack = ROUNDING * (track.max - track.min);
  const isBeyond = value < track.min - slack || value > track.max + slack;
  if (isBeyond || endedBy === 'range') return { at, kind: 'open' };
  return { at, kind: WIDE.includes(endedBy) ? 'wide' : 'stopped' };
}

/** How far along a track a value lies, 0 to 1; one beyond an end lies at it. */
export function shareAlongTrack(value: number, { min, max }: Range): number {
  return Math.min(1, Math.max(0, (value - min) / (max - min)));
}
