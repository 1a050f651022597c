import type { ReadonlySignal, Signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import type { Canvas, Point } from '../diagram/canvas';
import type { OverheadView } from '../diagram/overhead-view';
import type { ShooterPart } from '../diagram/shooter-parts';
import type { ShooterView } from '../diagram/shooter-view';
import type { SecondCopy } from '../state/backup/second-copy';
import type { BackupModel } from '../state/backup-model';
import type { CardsModel } from '../state/cards/cards-model';
import type { ChooseModel } from '../state/choose/choose-model';
import type { DeskModel } from '../state/desk-model';
import type { InstallModel } from '../state/install-model';
import type { KitInPlay } from '../state/kit-in-play';
import type { KitModel } from '../state/kit-model';
import type { Late } from '../state/late';
import type { LawNews } from '../state/law-news';
import type { LinksModel } from '../state/links/links-model';
import type { LogModel } from '../state/log/log-model';
import type { AwakeModel } from '../state/measure/awake-model';
import type { KnownKit } from '../state/measure/create-known-kit';
import type { MeasureModel } from '../state/measure/measure-model';
import type { PlayerFile } from '../state/player/player-file';
import type { PlayerModel } from '../state/player/player-model';
import type { RepairModel } from '../state/repair-model';
import type { RoomModel } from '../state/room-model';
import type { ShotModel } from '../state/shot-model';
import type { StorageNotices } from '../state/storage-notices';
import type { TabClashes } from '../state/tab-clashes';
import type { Router } from './route';
import type { Finger } from './shot/finger';
import type { InputName } from './shot/tile-words';
import type { Move } from './shot/use-drag';

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
  /** A copy that could be brought back; null until it was looked for. */
  readonly copy: ReadonlySignal<Pick<SecondCopy, 'offer' | 'hasNoRoom' | 'take' | 'giveUp'> | null>;
  /** That the engine's laws have changed. */
  readonly law: LawNews;
  /** The time of day, ms since 1970. */
  nowMs(): number;
  /** Loads the page anew. */
  reload(): void;
  /** Goes to where everything can be saved to a file. */
  openBackup(): void;
}

/** What the first screen reads and changes. */
export interface FirstModels {
  readonly shot: ShotModel;
  /** How far the shot may be off, how sure its aim is, how often it goes. */
  readonly room: RoomModel;
  /** Who plays, and what is learnt of them. */
  readonly player: PlayerModel;
  readonly kit: KitInPlay;
  /** What is known of the kit in play. */
  readonly measure: KnownKit;
  /** The time of day, ms since 1970. */
  nowMs(): number;
  /** Having the app on the home screen. */
  readonly install: InstallModel;
  readonly desk: DeskModel;
  readonly router: Router;
  readonly news: PlatformNews;
}

/** Everything the screens read and change. */
export interface AppModels extends FirstModels {
  readonly player: PlayerModel & { readonly file: PlayerFile };
  readonly kit: KitModel;
  /** A table with balls on it, and the ways to play them. */
  readonly choose: ChooseModel;
  /** What is to be logged, and the level test. */
  readonly log: LogModel;
  /** The trials that measure the kit in play, and what they told. */
  readonly measure: MeasureModel;
  /** Shots, positions and kits as links. */
  readonly links: LinksModel;
  /** Cards on paper, and pictures. */
  readonly cards: CardsModel;
  /** Keeping the screen awake. */
  readonly awake: AwakeModel;
  /** A copy of everything, out of here and back in. */
  readonly backup: BackupModel;
  /** The app itself, fetched anew. */
  readonly repair: RepairModel;
}

/** What is shown later than the first answer. A place comes with the models it reads. */
export interface LateParts {
  readonly models: Late<AppModels>;
  readonly news: Late<ComponentType<{ readonly news: PlatformNews }>>;
  readonly choose: Late<ComponentType>;
  readonly kit: Late<ComponentType>;
  readonly log: Late<ComponentType>;
  /** What became of the shot on screen. */
  readonly after: Late<ComponentType>;
  /** What answers a finger on the pictures of Shot. */
  readonly hand: Late<PictureHand>;
  readonly control: Late<ComponentType<ControlProps>>;
  readonly why: Late<ComponentType<WhyProps>>;
  /** The one question about who plays. */
  readonly question: Late<
    ComponentType<{ readonly app: Models<'player' | 'kit' | 'desk' | 'router'> }>
  >;
}

export interface PictureHand {
  /** What is taken hold of there, px; null where nothing is. */
  shooterGrip(
    app: Models<'shot' | 'kit' | 'desk'>,
    view: ShooterView,
    at: Point,
    finger: Signal<Finger | null>,
  ): Move | null;
  stripGrip(
    app: Models<'shot' | 'kit' | 'desk'>,
    view: OverheadView,
    canvas: Canvas,
    at: Point,
    finger: Signal<Finger | null>,
  ): Move | null;
  /** What lies there; the next of it where one was named before, and null after the last. */
  partUnder(view: ShooterView, at: Point, before: ShooterPart | null): ShooterPart | null;
  /** The next of all that is drawn; null after the last. */
  nextPart(view: ShooterView, before: ShooterPart | null): ShooterPart | null;
  /** What each part is. */
  readonly PART_WORDS: Readonly<Record<ShooterPart, string>>;
  readonly RunRow: ComponentType<RunProps>;
  /** What a finger sets, told off it. */
  readonly OffFinger: ComponentType<OffFingerProps>;
}

export interface OffFingerProps {
  readonly app: Models<'shot' | 'kit' | 'desk'>;
  /** The finger that drags; null while none does. */
  readonly finger: Signal<Finger | null>;
  readonly canvas: ReadonlySignal<Canvas>;
  /** How far above the drawing there is room, px. */
  readonly abovePx: number;
}

export interface RunProps {
  readonly app: Models<'shot' | 'room' | 'kit'>;
  /** Where its room begins, px; null where there is none. */
  readonly topY: ReadonlySignal<number | null>;
  readonly canvas: ReadonlySignal<Canvas>;
}

export interface ControlProps {
  readonly app: Models<'shot' | 'room' | 'kit' | 'desk'>;
  readonly name: InputName;
}

export interface WhyProps {
  /** What Shot itself does without; null where it could not be loaded. */
  readonly late?: Pick<AppModels, 'cards' | 'awake'> | null;
  readonly app: Models<'shot' | 'room' | 'player' | 'kit' | 'measure' | 'desk' | 'router'>;
}

/** Some of them, as the first screen has them: what a component reads stands in its signature. */
export type Models<M extends keyof AppModels> = {
  readonly [K in M]: K extends keyof FirstModels ? FirstModels[K] : AppModels[K];
};

/** The same with all that a place has which comes later. */
export type LaterModels<M extends keyof AppModels> = Pick<AppModels, M>;
