import { aimOffsetM } from '../../diagram/aim-offset';
import type { WindowEnd } from '../../engine/room/windows';
import { LENGTH_UNITS } from '../../units/length-unit';
import type { Models } from '../app-models';
import { inWords, lengthReading, type Reading } from './answer-words';
import { hairWords, MISS_WORDS } from './room-words';

/** One end of the aims that still go: where it passes, and what becomes of the shot beyond. */
export interface AimEnd {
  /** Null where every aim on that side goes. */
  readonly reading: Reading | null;
  readonly miss: string;
}

/** The aims that still go, from the left one to the right one; null where none is known. */
export function aimWindow({
  shot,
  room,
  desk,
}: Models<'shot' | 'room' | 'desk'>): readonly AimEnd[] | null {
  const window = room.room.value?.windows?.aimRad;
  const last = shot.lastAnswer.value;
  if (!window || !last) return null;
  const { lead, lengthUnit } = desk.preferences.value;
  const endAt = ({ value, endedBy }: WindowEnd): AimEnd => {
    const offsetM = aimOffsetM(last.shot, last.kit.ballRadiusM, lead, value);
    const isOpen = endedBy === 'range';
    return {
      reading: isOpen ? null : lengthReading(offsetM, lengthUnit, ''),
      miss: MISS_WORDS[endedBy],
    };
  };
  return [endAt(window.low), endAt(window.high)];
}

/** Where both ends read alike, how little is left about them; else empty. */
export function aimHairWords({ desk }: Models<'desk'>, ends: readonly AimEnd[]): string {
  const [from, to] = ends.map(({ reading }) => reading && inWords(reading));
  return from && from === to
    ? hairWords(LENGTH_UNITS[desk.preferences.value.lengthUnit], ...ends.map(({ miss }) => miss))
    : '';
}

/** The same as one phrase to be heard; empty where none is known. */
export function aimWindowWords(app: Models<'shot' | 'room' | 'desk'>): string {
  const ends = aimWindow(app);
  if (!ends) return '';
  const hair = aimHairWords(app, ends);
  if (hair) return ` Aims go ${hair}`;
  const [from, to] = ends.map(({ reading, miss }) =>
    reading ? `${inWords(reading)} (${miss})` : 'anywhere',
  );
  const ball = app.desk.preferences.value.lead === 'object-ball' ? 'its centre' : 'the ghost ball';
  return ` From ${ball}, aims go from ${from} to ${to}`;
}
