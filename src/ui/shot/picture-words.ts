import type { Shot } from '../../engine/direct/shot';
import type { Answered } from '../../state/shot-answers';
import type { PathPoint } from '../../state/shot-ports';
import type { Preferences } from '../../store/records';
import { DISTANCE_UNITS, distanceInUnit } from '../../units/distance-unit';
import { formatQuantity } from '../../units/format-number';
import type { tipScale } from '../../units/tip-unit';
import type { Models } from '../app-models';
import {
  angleReading,
  answerInWords,
  answerReadings,
  inWords,
  lengthReading,
} from './answer-words';
import { limitInWords, tipInWords } from './tip-words';

/** A bow of less than this is a straight line to look at, m. */
const LEAST_BOW_M = 0.0005;

/** Said before an answer that does not hold, or not yet. */
export function staleNote({ measure }: Models<'measure'>): string {
  return measure.isSettled.value
    ? 'Last answer, not for these numbers:'
    : 'Working out what your readings tell. Before that:';
}

/** The same before what a drawing shows of it. */
export function staleWords(app: Models<'shot' | 'measure'>): string {
  return app.shot.stale.value ? `${staleNote(app)} ` : '';
}

/** What the shooter's view shows: how the ghost ball covers the object ball, aim and stick. */
export function shooterWords(last: Answered | null, preferences: Preferences): string {
  const view = 'The object ball as you see it';
  if (!last) return `${view}. There is no aim yet.`;
  const { ballRadiusM } = last.kit;
  const ghostM = -2 * ballRadiusM * Math.sin(last.shot.cutRad);
  const ghost = inWords(lengthReading(ghostM, preferences.lengthUnit, 'of its centre'));
  const readings = answerReadings(last.answer, ballRadiusM, preferences);
  const of = preferences.lead === 'object-ball' ? 'centre' : 'ghost ball';
  const stick = `Stick, from the ${of}: ${inWords(readings.stick.reading)}.`;
  return `${view}, the ghost ball ${ghost}. ${answerInWords(readings)} ${stick}`;
}

/** What the strip from above shows: the way to the ghost ball, its bow, the aim, the target. */
export function stripWords(
  last: Answered | null,
  path: readonly PathPoint[],
  { distanceUnit, lengthUnit }: Preferences,
  tableLengthM: number,
): string {
  if (!last) return 'There is no aim yet.';
  const { distanceM, cutRad } = last.shot;
  const distance = distanceInUnit(distanceM, distanceUnit, tableLengthM);
  const aim = lengthReading(last.answer.aimOffsetM, lengthUnit, 'of the ghost ball');
  const cut = angleReading(cutRad);
  return [
    `The cue ball goes ${formatQuantity(distance, DISTANCE_UNITS[distanceUnit])} to the ghost ball`,
    `its path ${bowWords(path, lengthUnit)}`,
    `the aim line passes ${inWords(aim)}`,
    cut.side === 'none'
      ? 'the object ball goes straight on.'
      : `the object ball goes ${inWords(cut)}.`,
  ].join('; ');
}

function bowWords(path: readonly PathPoint[], unit: Preferences['lengthUnit']): string {
  const bowM = path.reduce((most, { xM }) => (Math.abs(xM) > Math.abs(most) ? xM : most), 0);
  if (Math.abs(bowM) < LEAST_BOW_M) return 'straight';
  return `bows ${inWords(lengthReading(bowM, unit, 'of the straight line'))}`;
}

/** Where the tip touches the face, and how far out it may: "⅜ tip left, ½ tip low; …". */
export function faceWords(
  contact: Pick<Shot, 'side' | 'height'>,
  limit: number,
  unit: Preferences['tipUnit'],
  scale: ReturnType<typeof tipScale>,
): string {
  const at = tipInWords(contact, unit, scale);
  return `${at}; the miscue limit is ${limitInWords(limit, scale)} out`;
}
