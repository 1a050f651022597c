import type { ReadonlySignal } from '@preact/signals';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { Speaker } from '../../sensors/find-speaker';
import type { Table } from '../../store/records';
import type { SavedPosition } from '../../store/saved-position';
import type { StorePort } from '../../store/store-port';
import type { Work } from '../../worker/engine-pool';
import type { PlayerModel } from '../player/player-model';
import type { ShotModel } from '../shot-model';
import type { Later } from './work-at-rest';

/** What the place Choose needs from the rest of the app. */
export interface ChoosePorts {
  readonly store: Pick<StorePort, 'put' | 'delete' | 'onElsewhere'>;
  /** As loaded. */
  readonly positions: readonly SavedPosition[];
  /** The table in play. */
  readonly table: ReadonlySignal<Table>;
  /** What is known of the kit in play, its slope as seen from the break end. */
  readonly knowledge: ReadonlySignal<KitKnowledge>;
  /** Who plays. */
  readonly player: Pick<PlayerModel, 'profile' | 'known' | 'inPlay' | 'isKnown'>;
  /** Works jobs out beside the page; null where the browser cannot. */
  readonly work: Work | null;
  readonly shot: Pick<ShotModel, 'ask'>;
  /** Reads aloud; null, or left out, where the browser cannot. */
  readonly speaker?: Speaker | null;
  /** When what works by itself may begin. */
  readonly later: Later;
  /** The time of day, ms since 1970. */
  readonly now?: () => number;
  readonly newId?: () => string;
}
