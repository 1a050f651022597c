import { DISTANCE_UNITS } from '../../units/distance-unit';
import { formatNumber } from '../../units/format-number';
import type { Models } from '../app-models';
import { Choices } from '../controls/Choices';
import { DistanceUnitSelect } from './DistanceUnitSelect';
import { NumberControl } from './NumberControl';
import { distancePicks } from './quick-picks';

/** How far away, in the unit and between the points preferred. */
export function DistanceControl({ app }: { app: Models<'shot' | 'room' | 'desk'> }) {
  const { desk } = app;
  const { distanceUnit, distanceFrom } = desk.preferences.value;
  const facts = DISTANCE_UNITS[distanceUnit];
  return (
    <NumberControl
      app={app}
      name="distance"
      label="Distance"
      less="Nearer"
      more="Farther"
      picks={distancePicks(distanceUnit, (figure) => formatNumber(figure, facts))}
      unit={<DistanceUnitSelect desk={desk} />}
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
