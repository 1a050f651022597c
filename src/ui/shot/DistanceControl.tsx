import { DISTANCE_UNITS } from '../../units/distance-unit';
import { formatNumber } from '../../units/format-number';
import type { DistanceUnit } from '../../units/unit-names';
import type { AppModels } from '../app-models';
import { Choices } from '../controls/Choices';
import { UnitSelect } from '../controls/UnitSelect';
import { NumberControl } from './NumberControl';
import { distancePicks } from './quick-picks';

const DISTANCE_OPTIONS: readonly (readonly [DistanceUnit, string])[] = [
  ['m', 'm'],
  ['cm', 'cm'],
  ['in', 'in'],
  ['diamonds', 'diamonds'],
  ['table-lengths', 'tables'],
];

/** How far away, in the unit and between the points preferred. */
export function DistanceControl({ app: { shot, desk } }: { app: AppModels }) {
  const { distanceUnit, distanceFrom } = desk.preferences.value;
  const facts = DISTANCE_UNITS[distanceUnit];
  return (
    <NumberControl
      model={shot}
      name="distance"
      label="Distance"
      less="Nearer"
      more="Farther"
      picks={distancePicks(distanceUnit, (figure) => formatNumber(figure, facts))}
      unit={
        <UnitSelect
          label="Unit of distance"
          value={distanceUnit}
          options={DISTANCE_OPTIONS}
          onChoose={(unit) => desk.setPreference('distanceUnit', unit)}
        />
      }
    >
      <Choices
        label="Measured from the cue ball"
        items={[
          { value: 'ghost-ball', content: 'centre to ghost ball' },
          { value: 'ball-to-ball', content: 'ball to ball' },
        ]}
        isChosen={(from) => from === distanceFrom}
        onChoose={(from) => desk.setPreference('distanceFrom', from)}
      />
    </NumberControl>
  );
}
