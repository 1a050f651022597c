import { RAD_PER_DEG } from '../numerics/angle';
import { isBeyondMiscue } from '../stroke/miscue-limit';

/** How a shot can be played: all but the balls' places and the aim. */
export interface OptionStroke {
  readonly side: number;
  readonly height: number;
  readonly elevationRad: number;
  readonly speedMps: number;
}

/**
 * The strokes to compare: every combination of the four lists that the tip can hold. Places run
 * through sides first, then speeds, heights and elevations, the likeliest of the latter two first.
 */
export interface OptionGrid {
  readonly sides: readonly number[];
  readonly heights: readonly number[];
  readonly elevationsRad: readonly number[];
  readonly speedsMps: readonly number[];
  /** Of each height the most level cue that clears what is behind the ball; left out: every one does. */
  readonly leastAtHeightsRad?: readonly number[];
}

/** Just inside the miscue limit, and as evenly as makes side 0 and height 0 one of them. */
const OUTERMOST = 0.45;
const SIDES_EACH_WAY = 8;
const HEIGHTS_EACH_WAY = 5;
/** Above the least the position allows: level, and raised by more and more (our choice). */
const RAISED_BY_RAD = [0, 4, 9, 16].map((deg) => deg * RAD_PER_DEG);
/** A ball that just gets there, to a break (common practice, no source). */
const SLOWEST_MPS = 0.6;
const FASTEST_MPS = 5;
const SPEEDS = 20;

/**
 * Every way worth looking at, over ten thousand of them.
 *
 * @param leastElevationRad what the position needs, or the most level stroke there is
 */
export function usualGrid(leastElevationRad: number): OptionGrid {
  return {
    sides: evenly(SIDES_EACH_WAY),
    heights: [...evenly(HEIGHTS_EACH_WAY)].sort((a, b) => Math.abs(a) - Math.abs(b)),
    elevationsRad: RAISED_BY_RAD.map((by) => leastElevationRad + by),
    speedsMps: Array.from(
      { length: SPEEDS },
      (_, at) => SLOWEST_MPS * (FASTEST_MPS / SLOWEST_MPS) ** (at / (SPEEDS - 1)),
    ),
  };
}

function evenly(eachWay: number): readonly number[] {
  return Array.from({ length: 2 * eachWay + 1 }, (_, at) => (OUTERMOST * (at - eachWay)) / eachWay);
}

/** How many places the grid has, those beyond the miscue limit counted. */
export function placesOf({ sides, heights, elevationsRad, speedsMps }: OptionGrid): number {
  return sides.length * heights.length * elevationsRad.length * speedsMps.length;
}

/** The stroke at a place, 0 to {@link placesOf}; null beyond the miscue limit. */
export function strokeAt(grid: OptionGrid, place: number): OptionStroke | null {
  const { sides, heights, elevationsRad, speedsMps } = grid;
  let rest = place;
  const take = (list: readonly number[]) => {
    const value = list[rest % list.length] ?? Number.NaN;
    rest = Math.floor(rest / list.length);
    return value;
  };
  const [side, speedMps, height, elevationRad] = [sides, speedsMps, heights, elevationsRad].map(
    take,
  ) as [number, number, number, number];
  if (isBeyondMiscue(side / MARGIN, height / MARGIN)) return null;
  const leastRad = grid.leastAtHeightsRad?.[heights.indexOf(height)] ?? 0;
  if (elevationRad < leastRad) return null;
  return { side, height, elevationRad, speedMps };
}

/** The contact point keeps this share of the way to the miscue limit. */
const MARGIN = 0.92;
