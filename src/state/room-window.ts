import type { RoomWindow, RoomWindows } from '../engine/room/windows';
import { degreesOf } from '../units/angle-degrees';
import type { SpeedScale } from '../units/speed-unit';
import type { FieldName } from './shot-fields';

/** The two ends of a window, in the unit shown. */
export type ShownWindow = Pick<RoomWindow, 'low' | 'high'>;

/**
 * The window of an input in the unit its field shows; null where it has none of its own.
 * @param tipsPerRadius units of tip contact in a radius
 */
export function shownWindow(
  name: FieldName,
  windows: RoomWindows,
  { inUnit }: Pick<SpeedScale, 'inUnit'>,
  tipsPerRadius: number,
): ShownWindow | null {
  switch (name) {
    case 'speed':
      return shown(windows.speedMps, inUnit);
    case 'elevation':
      return shown(windows.elevationRad, degreesOf);
    case 'side':
    case 'height':
      return shown(windows[name], (fraction) => fraction * tipsPerRadius);
    default:
      return null;
  }
}

function shown({ low, high }: RoomWindow, inUnit: (value: number) => number): ShownWindow {
  return {
    low: { ...low, value: inUnit(low.value) },
    high: { ...high, value: inUnit(high.value) },
  };
}
