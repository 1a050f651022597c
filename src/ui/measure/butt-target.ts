import type { Attempt } from '../../store/attempt';
import { formatQuantity } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import type { AppModels } from '../app-models';

/** How high the butt is to be raised for an attempt, ready to show: "41 cm". */
export function buttTarget(app: AppModels, { id }: Attempt): string {
  const unit = app.desk.preferences.value.lengthUnit === 'in' ? 'in' : 'cm';
  const facts = { ...LENGTH_UNITS[unit], decimals: unit === 'in' ? 1 : 0, leastDecimals: 0 };
  return formatQuantity(lengthInUnit(app.measure.buttHeightM(id) ?? 0, unit), facts);
}
