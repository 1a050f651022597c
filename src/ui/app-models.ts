import type { ReadonlySignal } from '@preact/signals';
import type { DeskModel } from '../state/desk-model';
import type { KitEffects } from '../state/kit-effects';
import type { KitModel } from '../state/kit-model';
import type { RoomModel } from '../state/room-model';
import type { ShotModel } from '../state/shot-model';
import type { Router } from './route';

/** What the platform has to tell the person. */
export interface PlatformNews {
  /** Takes the new version into use; null while there is none. */
  readonly applyUpdate: ReadonlySignal<(() => void) | null>;
  readonly isReadyOffline: ReadonlySignal<boolean>;
  /** Lines about the storage, ready to show. */
  readonly storageLines: ReadonlySignal<readonly string[]>;
}

/** Everything the screens read and change. */
export interface AppModels {
  readonly shot: ShotModel;
  /** How far the shot may be off, how sure its aim is, how often it goes. */
  readonly room: RoomModel;
  readonly kit: KitModel;
  /** What the kit in play does. */
  readonly effects: ReadonlySignal<KitEffects>;
  readonly desk: DeskModel;
  readonly router: Router;
  readonly news: PlatformNews;
}
