import { gridFrom } from '../../src/engine/plan/grid-from';
import { inventedPositions } from '../harness/invented-positions';

/** The last invented position, and the grid that is swept for it. */
export function sweptPosition() {
  const position = inventedPositions().at(-1);
  if (position === undefined) throw new RangeError('there are no positions');
  const { asked, shot } = position;
  const { position: balls, shape, kit } = asked.scene;
  return { asked, grid: gridFrom(balls, shot.headingRad, shape, kit) };
}
