import type { PocketName } from '../../engine/table/pocket-shape';
import type { Models } from '../app-models';
import { tellingOf } from '../chance-telling';
import { type PocketTold, pocketTold } from './pocket-words';

export type PocketsTold = ReadonlyMap<PocketName, PocketTold>;

export const NONE_TOLD: PocketsTold = new Map();

/** What is told of each pocket while the ball to play is chosen; of some nothing is known yet. */
export function pocketsTold(app: Models<'choose' | 'player'>): PocketsTold {
  const { choose } = app;
  if (choose.open.value.goal.ball === null) return NONE_TOLD;
  const telling = tellingOf(app);
  return new Map(
    choose.shape.value.pockets.flatMap(({ name }) => {
      const told = pocketTold(choose, name, telling);
      return told ? [[name, told] as const] : [];
    }),
  );
}
