import type { Preferences } from '../../store/records';
import type { Models } from '../app-models';
import { Choices } from '../controls/Choices';
import { PanelHeader } from './PanelHeader';

type Options<P extends keyof Preferences> = readonly (readonly [Preferences[P], string])[];

const LEAD: Options<'lead'> = [
  ['object-ball', 'on the object ball'],
  ['ghost-ball', 'from the ghost ball'],
];
const LENGTH: Options<'lengthUnit'> = [
  ['mm', 'mm'],
  ['cm', 'cm'],
  ['in', 'inches'],
];
const DISTANCE: Options<'distanceUnit'> = [
  ['m', 'm'],
  ['cm', 'cm'],
  ['ft', 'feet'],
  ['in', 'inches'],
  ['diamonds', 'diamonds'],
  ['table-lengths', 'tables'],
];
const FROM: Options<'distanceFrom'> = [
  ['ghost-ball', 'centre to ghost ball'],
  ['ball-to-ball', 'ball to ball'],
];
const SPEED: Options<'speedUnit'> = [
  ['mps', 'm/s'],
  ['kmh', 'km/h'],
  ['mph', 'mph'],
  ['lengths', 'table lengths'],
];
const CUT: Options<'cutUnit'> = [
  ['degrees', 'degrees'],
  ['ball-hit', 'ball hit'],
];
const TIP: Options<'tipUnit'> = [
  ['tips', 'tips'],
  ['clock', 'o’clock'],
  ['radii', 'radii (R)'],
];
const HAND: Options<'hand'> = [
  ['left', 'left'],
  ['right', 'right'],
];
const THEME: Options<'theme'> = [
  ['dark', 'dark'],
  ['light', 'light'],
  ['system', 'as the phone'],
];

/** How the person likes to read and press. */
export function PreferencesPanel({ app }: { app: Models<'desk' | 'router'> }) {
  return (
    <>
      <PanelHeader router={app.router} title="Units and layout" />
      <div class="preference-list">
        <Preference
          app={app}
          name="lead"
          label="The answer leads with where the aim passes"
          options={LEAD}
        />
        <Preference app={app} name="lengthUnit" label="Sideways figures" options={LENGTH} />
        <Preference app={app} name="distanceUnit" label="Distance" options={DISTANCE} />
        <Preference app={app} name="distanceFrom" label="Distance is measured" options={FROM} />
        <Preference app={app} name="cutUnit" label="Cut" options={CUT} />
        <Preference app={app} name="speedUnit" label="Speed" options={SPEED} />
        <Preference app={app} name="tipUnit" label="Tip on the cue ball" options={TIP} />
        <Preference app={app} name="hand" label="Buttons for the hand" options={HAND} />
        <Preference app={app} name="theme" label="Screen" options={THEME} />
      </div>
    </>
  );
}

interface Props<P extends keyof Preferences> {
  readonly app: Models<'desk'>;
  readonly name: P;
  readonly label: string;
  readonly options: Options<P>;
}

function Preference<P extends keyof Preferences>({ app, name, label, options }: Props<P>) {
  const { desk } = app;
  return (
    <Choices
      label={label}
      isLabelShown
      items={options.map(([value, content]) => ({ value, content }))}
      isChosen={(value) => value === desk.preferences.value[name]}
      onChoose={(value) => desk.setPreference(name, value)}
    />
  );
}
