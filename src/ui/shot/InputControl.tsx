import { useEffect } from 'preact/hooks';
import { DISTANCE_UNITS } from '../../units/distance-unit';
import { formatNumber } from '../../units/format-number';
import { SPEED_UNITS } from '../../units/speed-unit';
import type { SpeedUnit } from '../../units/unit-names';
import type { ControlProps, Models } from '../app-models';
import { Choices } from '../controls/Choices';
import { UnitSelect } from '../controls/UnitSelect';
import { CutControl } from './CutControl';
import { DistanceUnitSelect } from './DistanceUnitSelect';
import { lastInput } from './last-input';
import { NumberControl } from './NumberControl';
import { FixedUnit } from './NumberRow';
import { PocketControl } from './PocketControl';
import { distancePicks, elevationPicks, speedPicks } from './quick-picks';
import { reachSpeedMps } from './reach-speed';
import { TipControl } from './TipControl';
import { INPUT_LABELS } from './tile-words';

/** The control of one input, under the tiles. */
export function InputControl({ app, name }: ControlProps) {
  useEffect(() => {
    lastInput.value = name;
  }, [name]);
  return (
    <section id="input-control" class="input-control" aria-label={INPUT_LABELS[name]}>
      <Control app={app} name={name} />
    </section>
  );
}

function Control({ app, name }: ControlProps) {
  switch (name) {
    case 'distance':
      return <DistanceControl app={app} />;
    case 'cut':
      return <CutControl app={app} />;
    case 'pocket':
      return <PocketControl app={app} />;
    case 'speed':
      return <SpeedControl app={app} />;
    case 'raised':
      return <ElevationControl app={app} />;
    case 'tip':
      return <TipControl app={app} />;
  }
}

/** How far away, in the unit and between the points preferred. */
function DistanceControl({ app }: { app: Models<'shot' | 'room' | 'desk'> }) {
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

const SPEED_OPTIONS = (Object.keys(SPEED_UNITS) as SpeedUnit[]).map(
  (unit) => [unit, SPEED_UNITS[unit].symbol] as const,
);

/** How fast the cue ball leaves the tip. */
function SpeedControl({ app }: { app: Models<'shot' | 'room' | 'desk'> }) {
  const { desk } = app;
  const { speedUnit } = desk.preferences.value;
  return (
    <NumberControl
      app={app}
      name="speed"
      hasWindow
      label="Speed off the tip"
      less="Softer"
      more="Firmer"
      picks={speedPicks(app.shot.speedScale.value, reachSpeedMps(app.room))}
      unit={
        <UnitSelect
          label="Unit of speed"
          value={speedUnit}
          options={SPEED_OPTIONS}
          onChoose={(unit) => desk.setPreference('speedUnit', unit)}
        />
      }
    />
  );
}

/** How far the cue is raised over the cloth. */
function ElevationControl({ app }: { app: Models<'shot' | 'room'> }) {
  return (
    <NumberControl
      app={app}
      name="elevation"
      hasWindow
      label="Cue raised"
      less="Lower the butt"
      more="Raise the butt"
      picks={elevationPicks()}
      unit={<FixedUnit model={app.shot} name="elevation" />}
    />
  );
}
