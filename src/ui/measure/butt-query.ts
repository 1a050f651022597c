import type { Attempt } from '../../store/attempt';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { formatQuantity } from '../../units/format-number';
import type { AppModels } from '../app-models';
import type { KeypadDraft } from './keypad-draft';

/** Asks about a height that raises the cue quite otherwise than was asked for; null: as asked. */
export function buttQuery(
  app: AppModels,
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
