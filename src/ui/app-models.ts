import type { ReadonlySignal } from '@preact/signals';
import type { SecondCopy } from '../state/backup/second-copy';
import type { BackupModel } from '../state/backup-model';
import type { ChooseModel } from '../state/choose/choose-model';
import type { DeskModel } from '../state/desk-model';
import type { InstallModel } from '../state/install-model';
import type { KitEffects } from '../state/kit-effects';
import type { KitModel } from '../state/kit-model';
import type { LawNews } from '../state/law-news';
import type { LogModel } from '../state/log/log-model';
import type { AwakeModel } from '../state/measure/awake-model';
import type { MeasureModel } from '../state/measure/measure-model';
import type { PlayerModel } from '../state/player/player-model';
import type { RepairModel } from '../state/repair-model';
import type { RoomModel } from '../state/room-model';
import type { ShotModel } from '../state/shot-model';
import type { StorageNotices } from '../state/storage-notices';
import type { TabClashes } from '../state/tab-clashes';
import type { Router } from './route';

/** What the platform has to tell the person. */
export interface PlatformNews {
  /** Takes the new version into use; null while there is none. */
  readonly applyUpdate: ReadonlySignal<(() => void) | null>;
  readonly isReadyOffline: ReadonlySignal<boolean>;
  /** A file that does not come as it was built, so the app is not stored; null while there is none. */
  readonly alteredFile: ReadonlySignal<string | null>;
  readonly storage: StorageNotices;
  /** What two tabs did at once. */
  readonly tabs: TabClashes;
  /** A copy that could be brought back. */
  readonly copy: Pick<SecondCopy, 'offer' | 'hasNoRoom' | 'take' | 'giveUp'>;
  /** That the engine's laws have changed. */
  readonly law: LawNews;
  /** The time of day, ms since 1970. */
  nowMs(): number;
  /** Loads the page anew. */
  reload(): void;
  /** Goes to where everything can be saved to a file. */
  openBackup(): void;
}

/** Everything the screens read and change. */
export interface AppModels {
  readonly shot: ShotModel;
  /** How far the shot may be off, how sure its aim is, how often it goes. */
  readonly room: RoomModel;
  /** A table with balls on it, and the ways to play them. */
  readonly choose: ChooseModel;
  /** Who plays, and what is learnt of them. */
  readonly player: PlayerModel;
  /** What is to be logged, and the level test. */
  readonly log: LogModel;
  readonly kit: KitModel;
  /** What the kit in play does. */
  readonly effects: ReadonlySignal<KitEffects>;
  /** The trials that measure the kit in play, and what they told. */
  readonly measure: MeasureModel;
  /** Keeping the screen awake. */
  readonly awake: AwakeModel;
  /** The time of day, ms since 1970. */
  nowMs(): number;
  /** A copy of everything, out of here and back in. */
  readonly backup: BackupModel;
  /** The app itself, fetched anew. */
  readonly repair: RepairModel;
  /** Having the app on the home screen. */
  readonly install: InstallModel;
  readonly desk: DeskModel;
  readonly router: Router;
  readonly news: PlatformNews;
}

/** Some of them: what a component reads stands in its signature. */
export type Models<M extends keyof AppModels> = Pick<AppModels, M>;
