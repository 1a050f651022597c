import type { RoomModel } from '../../state/room-model';

/**
 * The softest speed, m/s, at which the object ball still reaches the pocket, the rest of the stroke
 * as meant; null where that is not known, or where something else ends the speeds that go.
 */
export function reachSpeedMps({ room }: Pick<RoomModel, 'room'>): number | null {
  const low = room.value?.windows?.speedMps.low;
  return low?.endedBy === 'short' ? low.value : null;
}
