import type { Kit } from '../kit/kit';
import { ballNamed, placeOf, without } from '../lie/balls-of';
import { leastElevation } from '../lie/least-elevation';
import type { Position } from '../lie/position';
import type { TableShape } from '../table/table-shape';
import { type OptionGrid, usualGrid } from './option-grid';

/**
 * The strokes to compare from a position. What the cue has to clear behind the cue ball asks more
 * elevation of a low contact than of a high one: of each height only strokes that clear it are held.
 */
export function gridFrom(
  position: Position,
  headingRad: number,
  shape: TableShape,
  kit: Kit,
): OptionGrid {
  const cueBall = ballNamed(position, 'cue');
  if (cueBall === null) return usualGrid(0);
  const others = without(position, 'cue');
  const leastAt = (height: number) =>
    leastElevation(placeOf(cueBall), headingRad, others, shape, kit, { side: 0, height })
      .elevationRad;
  const { heights } = usualGrid(0);
  const leastAtHeightsRad = heights.map(leastAt);
  return { ...usualGrid(Math.min(...leastAtHeightsRad)), leastAtHeightsRad };
}
