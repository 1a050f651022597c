import type { RoomWindow, RoomWindows } from '../engine/room/windows';
import type { Preferences } from '../store/records';
import { degreesOf } from '../units/angle-degrees';
import { speedInUnit } from '../units/speed-unit';
import type { FieldName } from './shot-fields';

/** The two ends of a window, in the unit shown. */
export type ShownWindow = Pick<RoomWindow, 'low' | 'high'>;

/** The window of an input in the unit its field shows; null where it has none of its own. */
export function shownWindow(
  name: FieldName,
  windows: RoomWindows,
  { speedUnit }: Preferences,
): ShownWindow | null {
  switch (name) {
    case 'speed':
      return scaled(windows.speedMps, speedInUnit(1, speedUnit));
    case 'elevation':
      return scaled(windows.elevationRad, degreesOf(1));
    case 'side':
    case 'height':
      return windows[name];
    default:
      return null;
  }
}

function scaled({ low, high }: RoomWindow, by: number): ShownWindow {
  return {
    low: { ...low, value: low.value * by },
    high: { ...high, value: high.value * by },
  };
}
