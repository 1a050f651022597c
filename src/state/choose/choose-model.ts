import type { ReadonlySignal } from '@preact/signals';
import type { WhyClosed } from '../../engine/goal/closed-pockets';
import type { LegalRule } from '../../engine/goal/legal';
import type { NoShot, PositionShot } from '../../engine/goal/position-shot';
import type { Neighbour } from '../../engine/lie/neighbours';
import type { BallName, NamedBall } from '../../engine/lie/position';
import type { ChanceMap } from '../../engine/plan/chance-map';
import type { FanPlay, RankedWay } from '../../engine/plan/ranked-way';
import type { ChanceRange } from '../../engine/player/some-players';
import type { PocketName } from '../../engine/table/pocket-shape';
import type { TableShape } from '../../engine/table/table-shape';
import type { SavedPosition, Zone } from '../../store/saved-position';
import type { CopyResult, EditResult } from '../edit-result';
import type { Gestures } from '../history';
import type { ShotToLog } from '../log/shot-to-log';
import type { PocketChances } from './all-pockets';
import type { AllWays } from './all-ways/all-ways';
import type { Difference } from './for-most';
import type { WayToAsk, WithWay } from './way-to-ask';

/** How far the comparison has come. */
export interface Comparison {
  readonly state: 'none' | 'running' | 'done' | 'stopped' | 'failed';
  /** 0 to 1. */
  readonly progress: number;
  readonly map: ChanceMap | null;
  /** The easiest first; they come while it still runs. */
  readonly ways: readonly RankedWay[];
  /** Where the first ways differ for whoever plays as they do not for most; null: nowhere, or not yet. */
  readonly difference: Difference | null;
  /** True where position, kit or player have changed since: shown, but greyed. */
  readonly isStale: boolean;
  /** One line on what went wrong, or null. */
  readonly problem: string | null;
}

/** A table with balls on it, what to play, and the ways to play it. */
export interface ChooseModel extends Gestures {
  readonly shape: ReadonlySignal<TableShape>;
  /** All that are kept, the last used first; examples are invented and say so. */
  readonly saved: ReadonlySignal<readonly SavedPosition[]>;
  /** Ways kept to be played again, which are not laid here: the newest first. */
  readonly drills: ReadonlySignal<readonly SavedPosition[]>;
  /** The last one removed, of either, while {@link restore} can bring it back. */
  readonly lastDeleted: ReadonlySignal<SavedPosition | null>;
  /** Why no position can be added, in one line; null where one can. */
  readonly crowded: ReadonlySignal<string | null>;
  readonly open: ReadonlySignal<SavedPosition>;
  readonly selected: ReadonlySignal<BallName | null>;
  /** What lies beside the ball selected, the nearest first. */
  readonly neighbours: ReadonlySignal<readonly Neighbour[]>;
  /** Every two balls that touch. */
  readonly frozenPairs: ReadonlySignal<readonly (readonly [BallName, BallName])[]>;
  /** The ball that pockets are told of: the one selected, else the one to be played. */
  readonly tried: ReadonlySignal<number | null>;
  /** Where it cannot go. */
  readonly closed: ReadonlySignal<ReadonlyMap<PocketName, WhyClosed>>;
  /** About how often it goes into each; null: there is no such ball, or it is not known yet. */
  readonly chances: ReadonlySignal<PocketChances | null>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** What the position and the goal make; null while no ball and pocket are chosen. */
  readonly shot: ReadonlySignal<PositionShot | NoShot | null>;
  /** The last one that was a shot, to show greyed while {@link shot} is none. */
  readonly lastShot: ReadonlySignal<PositionShot | null>;
  readonly comparison: ReadonlySignal<Comparison>;
  /** Ways of every kind, of any ball and pocket. */
  readonly all: AllWays;
  /** The way looked at, and how it plays out. */
  readonly chosen: ReadonlySignal<RankedWay | null>;
  readonly fan: ReadonlySignal<readonly FanPlay[]>;
  /** How far its chance may be off for what is not known of the player; null: not known, or not yet. */
  readonly range: ReadonlySignal<ChanceRange | null>;
  /** The way looked at, as it is logged; null where there is none, or the balls or the kit changed since. */
  readonly toLog: ReadonlySignal<ShotToLog | null>;
  /** Whether more is known of who plays than the chance of the way looked at counts: it is on its way. */
  readonly isChanceStale: ReadonlySignal<boolean>;
  /** One line on what could not be done or saved, or null. */
  readonly problem: ReadonlySignal<string | null>;
  select(name: BallName | null): void;
  /** Puts a ball down or moves it, kept on the bed; snaps where near. Refused in another ball. */
  place(name: BallName, xM: number, yM: number, isSnapping: boolean): EditResult;
  /** Puts a ball down in the middle, or as near to it as there is room. */
  putDown(name: BallName): EditResult;
  /** Keeps out of other balls; one undo for a whole drag: call `endDrag` when the finger lifts. */
  drag(name: BallName, xM: number, yM: number): EditResult;
  endDrag(): void;
  /** Ends a drag that was taken away: the ball lies where it lay, and no undo is left behind. */
  cancelDrag(): void;
  /** As far as there is room; refused where another ball stops it. */
  nudge(name: BallName, rightM: number, upM: number): EditResult;
  /** Moves a ball against the nearest other ball or cushion. */
  freeze(name: BallName): EditResult;
  takeOff(name: BallName): EditResult;
  ballAt(name: BallName): NamedBall | null;
  undo(): void;
  redo(): void;
  /** Chooses what to play; null chooses nothing. */
  playBall(ball: number | null): void;
  playInto(pocket: PocketName | null): void;
  /** Says what may be touched first. */
  allow(rule: LegalRule): void;
  /** Where the cue ball should come to rest; null: anywhere. */
  markZone(zone: Zone | null): void;
  openPosition(id: string): EditResult;
  /** A new empty one, opened. */
  add(): string;
  /** Adds one that came from elsewhere beside all others, and opens it; its way is laid on it, and kept by nobody. */
  bring(position: SavedPosition): CopyResult;
  duplicate(id: string): EditResult;
  rename(id: string, name: string): EditResult;
  remove(id: string): EditResult;
  /** Puts {@link lastDeleted} back. */
  restore(): EditResult;
  /**
   * From now on the chances of the pockets are worked out, and all ways compared, by themselves, each
   * time that what is asked has come to rest. Not a way that is looked at is taken away for it, as
   * long as the balls lie. The function it gives ends that.
   *
   * @param isLaying balls are being laid: nothing but the pockets for the one selected
   */
  attend(isLaying?: boolean): () => void;
  /** Compares all ways to play the shot, anew. */
  compare(): void;
  stop(): void;
  choose(way: RankedWay | null): void;
  /** The way of a cell of the map, worked out in full and chosen. */
  chooseCell(side: number, speed: number): void;
  /**
   * What Shot would ask of the way looked at, of whichever list is shown; null where there is none, it is
   * no direct cut, or balls or kit changed since.
   */
  readonly wayToAsk: ReadonlySignal<WayToAsk | null>;
  /** The way looked at, with its position, as it can be kept; null where there is none, or the balls lie otherwise since. */
  readonly wayToKeep: ReadonlySignal<WithWay | null>;
  /** As what it is kept already, by id; null where it is not. */
  readonly keptAs: ReadonlySignal<string | null>;
  /** Keeps the way looked at, to be played again; one that is kept already stays the one that it is. */
  keepDrill(name: string): CopyResult;
  /** Counts a try of a kept way that Shot cannot ask; false where it is not there. */
  logTry(id: string, playerId: string, went: boolean): boolean;
  /** Takes back the last one of a player. */
  takeBackTry(id: string, playerId: string): void;
  /** Fills Shot in with the chosen way; false where there is none. */
  sendToShot(): boolean;
  flush(): Promise<void>;
}
