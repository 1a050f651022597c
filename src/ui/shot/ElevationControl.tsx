import type { Models } from '../app-models';
import { NumberControl } from './NumberControl';
import { FixedUnit } from './NumberRow';
import { elevationPicks } from './quick-picks';

/** How far the cue is raised over the cloth. */
export function ElevationControl({ app }: { app: Models<'shot' | 'room'> }) {
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
