import type { DistanceUnit } from '../../units/unit-names';
import type { Models } from '../app-models';
import { UnitSelect } from '../controls/UnitSelect';

const OPTIONS: readonly (readonly [DistanceUnit, string])[] = [
  ['m', 'm'],
  ['cm', 'cm'],
  ['ft', 'ft'],
  ['in', 'in'],
  ['diamonds', 'diamonds'],
  ['table-lengths', 'tables'],
];

/** The unit of every distance on the table. */
export function DistanceUnitSelect({ desk }: Models<'desk'>) {
  return (
    <UnitSelect
      label="Unit of distance"
      value={desk.preferences.value.distanceUnit}
      options={OPTIONS}
      onChoose={(unit) => desk.setPreference('distanceUnit', unit)}
    />
  );
}
