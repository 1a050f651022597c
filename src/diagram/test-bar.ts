import type { KnownFigure } from '../engine/player/learn';
import type { Interval } from './trial-bars';
import { shareAlongTrack } from './window-bar';

/** The ends of the track, rad: finer and rougher lines than players have. It is the same for all tests. */
export const TRACK = { min: 0.02 * (Math.PI / 180), max: Math.PI / 180 } as const;

/** Where a line lies along the track, 0 to 1, by its logarithm: a line twice as fine is one step on. */
export function layOutTestBar({ value, low, high }: KnownFigure): Interval {
  const track = { min: Math.log(TRACK.min), max: Math.log(TRACK.max) };
  const at = (rad: number) => shareAlongTrack(Math.log(Math.max(rad, TRACK.min)), track);
  return { from: at(low), at: at(value), to: at(high) };
}
