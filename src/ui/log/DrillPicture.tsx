import type { DrillPosition } from '../../state/log/kept-drills';
import type { Models } from '../app-models';
import { DrawnWay } from '../choose/all-ways/WayPicture';
import { useLaid, usePlayed } from './use-played';

/** A kept way drawn small: what each ball does until the one meant falls. */
export function DrillPicture({ app, drill }: { app: Models<'log'>; drill: DrillPosition }) {
  const way = usePlayed(app, useLaid(app, drill));
  return <DrawnWay class="position-picture" way={way} widthPx={92} heightPx={52} />;
}
