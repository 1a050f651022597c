import { type ShownWindow, shownWindow } from '../../state/room-window';
import type { FieldName } from '../../state/shot-fields';
import type { Models } from '../app-models';
import { windowWords } from './room-words';

/** The window of a field's input, in the unit it shows; null where there is none. */
export function fieldWindow(
  { room, shot }: Models<'shot' | 'room'>,
  name: FieldName,
): ShownWindow | null {
  const windows = room.room.value?.windows;
  if (!windows) return null;
  return shownWindow(name, windows, shot.speedScale.value, shot.tipScale.value.perRadius);
}

/** The same in words that follow "goes"; empty where there is none. */
export function fieldWindowWords(
  app: Models<'shot' | 'room'>,
  name: FieldName,
  write = windowWords,
): string {
  const window = fieldWindow(app, name);
  return window ? write(window, app.shot.fields[name].value.facts) : '';
}

/** Whether the room for error told is not that of what now stands in the inputs. */
export function isRoomStale({ shot, room }: Models<'shot' | 'room'>): boolean {
  return !room.isFresh.value || shot.stale.value || shot.hasPocketProblem.value;
}
