import { SPEED_UNITS } from '../../units/speed-unit';
import type { SpeedUnit } from '../../units/unit-names';
import type { Models } from '../app-models';
import { UnitSelect } from '../controls/UnitSelect';
import { NumberControl } from './NumberControl';
import { speedPicks } from './quick-picks';

const SPEED_OPTIONS = (Object.keys(SPEED_UNITS) as SpeedUnit[]).map(
  (unit) => [unit, SPEED_UNITS[unit].symbol] as const,
);

/** How fast the cue ball leaves the tip. */
export function SpeedControl({ app }: { app: Models<'shot' | 'room' | 'desk'> }) {
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
      picks={speedPicks(app.shot.speedScale.value)}
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
