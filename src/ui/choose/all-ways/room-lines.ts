import type { RoomWindow } from '../../../engine/room/windows';
import type { ToldWay } from '../../../engine/ways/refine-found';
import { shownWindow } from '../../../state/room-window';
import { LENGTH_UNITS, lengthInUnit } from '../../../units/length-unit';
import type { LengthUnit } from '../../../units/unit-names';
import type { Models } from '../../app-models';
import { windowWords } from '../../shot/room-words';

/** One part of the stroke, and how far it may be off. */
export interface RoomLine {
  readonly what: string;
  readonly words: string;
}

const PARTS = [
  ['speed', 'Speed'],
  ['side', 'Side'],
  ['height', 'Height'],
  ['elevation', 'Cue raised'],
] as const;

const SIDES = { plus: 'right', minus: 'left' } as const;

/**
 * What each part of a stroke forgives, the others held; empty where the stroke itself hardly goes.
 * @param awayM how far off the point is at which the line's room is told
 */
export function roomLines(
  { shot, desk }: Models<'shot' | 'desk'>,
  { windows, option: { stroke } }: Pick<ToldWay, 'windows' | 'option'>,
  awayM: number,
): readonly RoomLine[] {
  if (windows === null) return [];
  const { lengthUnit } = desk.preferences.value;
  const line = lateral(windows.aimRad, stroke.aimRad, awayM, lengthUnit);
  const scale = shot.speedScale.value;
  const { perRadius } = shot.tipScale.value;
  return [
    { what: 'Line', words: windowWords(line, { ...LENGTH_UNITS[lengthUnit], sides: SIDES }) },
    ...PARTS.flatMap(([name, what]) => {
      const window = shownWindow(name, windows, scale, perRadius);
      const { facts } = shot.fields[name].value;
      return window ? [{ what, words: windowWords(window, facts) }] : [];
    }),
  ];
}

/** A window of the line as it is seen so far off, right +. */
function lateral({ low, high }: RoomWindow, aimRad: number, awayM: number, unit: LengthUnit) {
  const seen = (rad: number) => lengthInUnit(awayM * Math.tan(rad - aimRad), unit);
  return {
    low: { ...low, value: seen(low.value) },
    high: { ...high, value: seen(high.value) },
  };
}
