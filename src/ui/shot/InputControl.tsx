import { CUT_UNITS } from '../../units/cut-unit';
import { DISTANCE_UNITS } from '../../units/distance-unit';
import { formatNumber } from '../../units/format-number';
import { SPEED_UNITS } from '../../units/speed-unit';
import type { CutUnit, DistanceUnit, SpeedUnit } from '../../units/unit-names';
import type { AppModels } from '../app-models';
import { Choices } from '../controls/Choices';
import { UnitSelect } from '../controls/UnitSelect';
import { FixedUnit, NumberControl } from './NumberControl';
import { cutPicks, distancePicks, elevationPicks, speedPicks } from './quick-picks';
import { TipControl } from './TipControl';
import { INPUT_LABELS, type InputName } from './tile-words';

/** The control of one input, under the tiles. */
export function InputControl({ app, name }: { app: AppModels; name: InputName }) {
  return (
    <section id="input-control" class="input-control" aria-label={INPUT_LABELS[name]}>
      <Control app={app} name={name} />
    </section>
  );
}

function Control({ app, name }: { app: AppModels; name: InputName }) {
  switch (name) {
    case 'distance':
      return <DistanceControl app={app} />;
    case 'cut':
      return <CutControl app={app} />;
    case 'speed':
      return <SpeedControl app={app} />;
    case 'raised':
      return <ElevationControl app={app} />;
    case 'tip':
      return <TipControl app={app} />;
  }
}

const DISTANCE_OPTIONS: readonly (readonly [DistanceUnit, string])[] = [
  ['m', 'm'],
  ['cm', 'cm'],
  ['in', 'in'],
  ['diamonds', 'diamonds'],
  ['table-lengths', 'tables'],
];

function DistanceControl({ app: { shot, desk } }: { app: AppModels }) {
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

const CUT_OPTIONS: readonly (readonly [CutUnit, string])[] = [
  ['degrees', '°'],
  ['ball-hit', 'ball'],
];

function CutControl({ app: { shot, desk } }: { app: AppModels }) {
  const { cutUnit } = desk.preferences.value;
  const thinnerIsMore = cutUnit === 'degrees';
  return (
    <NumberControl
      model={shot}
      name="cut"
      label={CUT_UNITS[cutUnit].name === 'degrees' ? 'Cut' : 'Ball hit'}
      less={thinnerIsMore ? 'Fuller' : 'Thinner'}
      more={thinnerIsMore ? 'Thinner' : 'Fuller'}
      picks={cutPicks(cutUnit)}
      unit={
        <UnitSelect
          label="Unit of cut"
          value={cutUnit}
          options={CUT_OPTIONS}
          onChoose={(unit) => desk.setPreference('cutUnit', unit)}
        />
      }
    >
      <CutSide shot={shot} />
    </NumberControl>
  );
}

function CutSide({ shot }: Pick<AppModels, 'shot'>) {
  return (
    <div class="cut-side">
      <Choices
        label="The object ball goes"
        items={[
          { value: -1, content: '← goes left' },
          { value: 1, content: 'goes right →' },
        ]}
        isChosen={(sign) => sign === shot.cutSign.value}
        onChoose={(sign) => shot.setCutSign(sign < 0 ? -1 : 1)}
      />
    </div>
  );
}

const SPEED_OPTIONS = (Object.keys(SPEED_UNITS) as SpeedUnit[]).map(
  (unit) => [unit, SPEED_UNITS[unit].symbol] as const,
);

function SpeedControl({ app: { shot, desk } }: { app: AppModels }) {
  const { speedUnit } = desk.preferences.value;
  return (
    <NumberControl
      model={shot}
      name="speed"
      label="Speed off the tip"
      less="Softer"
      more="Firmer"
      picks={speedPicks(speedUnit)}
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

function ElevationControl({ app: { shot } }: { app: AppModels }) {
  return (
    <NumberControl
      model={shot}
      name="elevation"
      label="Cue raised"
      less="Lower the butt"
      more="Raise the butt"
      picks={elevationPicks()}
      unit={<FixedUnit model={shot} name="elevation" />}
    />
  );
}
