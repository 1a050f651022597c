import type { Models } from '../app-models';
import { angleReading } from './answer-words';
import { DistanceUnitSelect } from './DistanceUnitSelect';
import { FixedUnit, NumberRow } from './NumberRow';
import { Picks } from './Picks';
import { mouthPicks } from './quick-picks';
import { ValueSlider } from './ValueSlider';
import './PocketControl.css';

const MOUTH = 'Mouth of the pocket';
const AWAY = 'Distance to the pocket';

/** How far the object ball has to go and how wide the mouth is that it has to find. */
export function PocketControl({ app }: { app: Models<'shot' | 'room' | 'desk'> }) {
  const { shot, desk, room } = app;
  const { lengthUnit } = desk.preferences.value;
  const allowedRad = room.allowedRad.value;
  return (
    <div class="number-control">
      <NumberRow
        model={shot}
        name="pocket"
        label={AWAY}
        shownLabel="away"
        less="Pocket nearer"
        more="Pocket farther"
        unit={<DistanceUnitSelect desk={desk} />}
      />
      <ValueSlider app={app} name="pocket" label={AWAY} />
      <NumberRow
        model={shot}
        name="mouth"
        label={MOUTH}
        shownLabel="mouth"
        less="Mouth tighter"
        more="Mouth wider"
        unit={<FixedUnit model={shot} name="mouth" />}
      />
      <div class="mouth-slider">
        <ValueSlider app={app} name="mouth" label={MOUTH} />
      </div>
      <Picks model={shot} name="mouth" label={MOUTH} picks={mouthPicks(lengthUnit)} />
      {allowedRad !== null && (
        <p class="window-words">
          the object ball may leave {angleReading(allowedRad).figure} off either way
        </p>
      )}
    </div>
  );
}
