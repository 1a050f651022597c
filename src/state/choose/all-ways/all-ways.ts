import type { ReadonlySignal } from '@preact/signals';
import type { WayKind } from '../../../engine/goal/goal';
import type { NoWay } from '../../../engine/ways/why-none';
import type { ShotToLog } from '../../log/shot-to-log';
import type { WayToAsk } from '../way-to-ask';
import type { ListOrder } from './list-order';
import type { ShownWay } from './shown-way';

/** What of the ways is listed. */
export type WayFilter = WayKind | 'safety' | 'all';

/** How far the search for all ways has come. */
export interface WaysSearch {
  readonly state: 'none' | 'running' | 'done' | 'stopped' | 'failed';
  /** Parts and ways looked at, of how many. */
  readonly done: number;
  readonly of: number;
  /** As they were found; once all is looked at, in the order chosen. */
  readonly ways: readonly ShownWay[];
  /** The kinds of all ways found but safeties, of which those are the ones worth a look; empty until all is looked at. */
  readonly found: readonly WayKind[];
  /** Why there is none of some kinds; empty until all is looked at. */
  readonly none: readonly NoWay[];
  /** True where position, kit or player have changed since: shown, but greyed. */
  readonly isStale: boolean;
  /** Whether more is known of who plays, or of the kit, than is counted: they stand until looked for anew. */
  readonly isOutrun: boolean;
  /** One line on what went wrong or is missing, or null. */
  readonly problem: string | null;
}

/** All ways to play the open position, of every kind. */
export interface AllWays {
  /** What is listed. Direct cuts of one ball into one pocket are compared by themselves: see `isDirect`. */
  readonly filter: ReadonlySignal<WayFilter>;
  show(filter: WayFilter): void;
  /** Whether the list is that of one straight shot, compared over side and speed. */
  readonly isDirect: ReadonlySignal<boolean>;
  readonly search: ReadonlySignal<WaysSearch>;
  /** The orders there are: by the zone only where there is one. */
  readonly orders: ReadonlySignal<readonly ListOrder[]>;
  /** What the list is ordered by: another order of what is listed, for as long as the page is open. */
  readonly order: ReadonlySignal<ListOrder>;
  orderBy(order: ListOrder): void;
  /** The way looked at. */
  readonly chosen: ReadonlySignal<ShownWay | null>;
  choose(way: ShownWay | null): void;
  /** Whether balls, table or kit are others than when ways were looked for. */
  readonly isMoved: ReadonlySignal<boolean>;
  /** Whether a way that came from elsewhere is being worked out, to be looked at. */
  readonly isLaying: ReadonlySignal<boolean>;
  /** A direct cut that is looked at, as it is logged; null where there is none, or it is out of date. */
  readonly toLog: ReadonlySignal<ShotToLog | null>;
  /** From now on ways are looked for by themselves, once all is at rest; the function ends that. */
  attend(): () => void;
  look(): void;
  stop(): void;
  /** The direct cut that is looked at, as Shot asks it; null where there is none, or it is out of date. */
  readonly toAsk: ReadonlySignal<WayToAsk | null>;
  /** Fills Shot in with the direct cut that is looked at; false where there is none. */
  sendToShot(): boolean;
  /** Whether the browser can read aloud. */
  readonly canSpeak: boolean;
  readonly isSpeaking: ReadonlySignal<boolean>;
  speak(sentence: string): void;
  hush(): void;
}
