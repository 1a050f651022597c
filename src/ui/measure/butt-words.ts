import type { Attempt } from '../../store/attempt';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { formatQuantity } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import type { LaterModels } from '../app-models';
import type { KeypadDraft } from './keypad-draft';

/** How high the butt is to be raised for an attempt, ready to show: "41 cm". */
export function buttTarget(app: LaterModels<'measure' | 'desk'>, { id }: Attempt): string {
  const unit = app.desk.preferences.value.lengthUnit === 'in' ? 'in' : 'cm';
  const facts = { ...LENGTH_UNITS[unit], decimals: unit === 'in' ? 1 : 0, leastDecimals: 0 };
  return formatQuantity(lengthInUnit(app.measure.buttHeightM(id) ?? 0, unit), facts);
}

/** Asks about a height that raises the cue quite otherwise than was asked for; null: as asked. */
export function buttQuery(
  app: LaterModels<'measure'>,
  { id, shot }: Attempt,
  heightM: number,
  { figure, unit }: KeypadDraft,
): string | null {
  const toldRad = app.measure.elevationFarOff(id, heightM);
  if (toldRad === null) return null;
  const told = formatQuantity(Math.round(degreesOf(toldRad)), DEGREES);
  const asked = formatQuantity(degreesOf(shot.stroke.elevationRad), DEGREES);
  return `${figure} ${unit} raises the cue ${told}, not ${asked}: is that right?`;
}
