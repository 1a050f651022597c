import type { AppModels } from '../app-models';
import { FixedUnit, NumberControl } from './NumberControl';
import { elevationPicks } from './quick-picks';

/** How far the cue is raised over the cloth. */
export function ElevationControl({ app: { shot } }: { app: AppModels }) {
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
