import type { PocketName } from '../../engine/table/pocket-shape';
import type { Models } from '../app-models';
import { tellingOf } from '../chance-telling';
import { modeOf } from './choose-mode';
import { type PocketTold, pocketTold } from './pocket-words';

export type PocketsTold = ReadonlyMap<PocketName, PocketTold>;

const NONE_TOLD: PocketsTold = new Map();

/** What is told of each pocket for the ball tried; of some nothing is known yet. */
export function pocketsTold(app: Models<'choose' | 'player' | 'router'>): PocketsTold {
  const { choose } = app;
  const mode = modeOf(app.router.route.value.panel);
  // While balls are laid: none before all are known, so that nothing is worked out in a drag.
  const isLaid = choose.selected.value !== null && choose.chances.value !== null;
  if (mode !== 'play' && !(mode === 'balls' && isLaid)) return NONE_TOLD;
  if (choose.tried.value === null) return NONE_TOLD;
  const telling = tellingOf(app);
  return new Map(
    choose.shape.value.pockets.flatMap(({ name }) => {
      const told = pocketTold(choose, name, telling);
      return told ? [[name, told] as const] : [];
    }),
  );
}
