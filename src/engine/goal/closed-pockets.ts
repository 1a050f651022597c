import type { Kit } from '../kit/kit';
import type { Position } from '../lie/position';
import type { PocketName } from '../table/pocket-shape';
import type { TableShape } from '../table/table-shape';
import type { Pot } from './goal';
import { openWay } from './open-way';
import type { NoShot } from './position-shot';
import { shotFrom } from './shot-from-position';

/** Why a ball cannot be sent into a pocket. */
export type WhyClosed = Extract<NoShot['reason'], 'too-thin' | 'pocket-closed'>;

/**
 * The pockets a ball cannot be sent into from where it and the cue ball lie, played as a goal says, told from the points of
 * the cushions alone: enough to warn by, and quick enough for all six at once.
 */
export function closedPockets(
  position: Position,
  goal: Omit<Pot, 'pocket'>,
  shape: TableShape,
  kit: Kit,
): ReadonlyMap<PocketName, WhyClosed> {
  const closed = new Map<PocketName, WhyClosed>();
  for (const { name } of shape.pockets) {
    const shot = shotFrom(position, { ...goal, pocket: name }, shape, kit, openWay);
    if (!shot.ok && (shot.reason === 'too-thin' || shot.reason === 'pocket-closed')) {
      closed.set(name, shot.reason);
    }
  }
  return closed;
}
