import type { Models } from '../app-models';
import { CutControl } from './CutControl';
import { DistanceControl } from './DistanceControl';
import { ElevationControl } from './ElevationControl';
import { PocketControl } from './PocketControl';
import { SpeedControl } from './SpeedControl';
import { TipControl } from './TipControl';
import { INPUT_LABELS, type InputName } from './tile-words';

/** The control of one input, under the tiles. */
export function InputControl({
  app,
  name,
}: {
  app: Models<'shot' | 'room' | 'kit' | 'desk'>;
  name: InputName;
}) {
  return (
    <section id="input-control" class="input-control" aria-label={INPUT_LABELS[name]}>
      <Control app={app} name={name} />
    </section>
  );
}

function Control({
  app,
  name,
}: {
  app: Models<'shot' | 'room' | 'kit' | 'desk'>;
  name: InputName;
}) {
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
