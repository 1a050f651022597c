import type { Shot } from '../engine/direct/shot';
import type { PartNumbers } from '../engine/kit/kit-numbers';
import type {
  AimMark,
  CutUnit,
  DistanceUnit,
  LengthUnit,
  SpeedUnit,
  TipUnit,
} from '../units/unit-names';

/** Something about a record that was changed. What was read before belongs to its former self. */
export interface Change {
  readonly atMs: number;
  /** In a few words: "new tip", "new cloth", "balls washed". */
  readonly what: string;
}

/** Shared by everything a player can choose, copy, edit and delete. */
export interface Named {
  readonly id: string;
  readonly name: string;
  /** Where its numbers come from: our own invented examples, or typed in by hand. */
  readonly origin: 'invented' | 'by-hand';
  readonly changes: readonly Change[];
  /**
   * Id of a record on the same shelf whose measurements it starts from, or null. That one may be
   * gone, and records edited elsewhere may lead in a ring: whoever follows it stops somewhere.
   */
  readonly like: string | null;
}

/** Its mass ratio is that of an ordinary ball over the effective end mass of this cue. */
export interface Cue extends Named, PartNumbers<'cue'> {
  readonly tipDiameterM: number;
}

export interface Cloth extends Named, PartNumbers<'cloth'> {}

export interface BallSet extends Named, PartNumbers<'balls'> {}

export interface Table extends Named, PartNumbers<'table'> {
  /** Nose to nose. */
  readonly lengthM: number;
  readonly widthM: number;
}

/** The four shelves a player keeps, by the name of their store. */
export interface Shelves {
  readonly cues: Cue;
  readonly cloths: Cloth;
  readonly balls: BallSet;
  readonly tables: Table;
}
export type ShelfName = keyof Shelves;

/** Every shelf, in the order the app shows them. */
export const SHELF_NAMES = ['cues', 'cloths', 'balls', 'tables'] as const satisfies ShelfName[];

/** Which of each is in play: the id of a record on that shelf. */
export type Choice = { readonly [S in ShelfName]: string };

export interface Preferences {
  /** Sideways figures: the aim offset. */
  readonly lengthUnit: LengthUnit;
  readonly distanceUnit: DistanceUnit;
  /** Whether distance is given centre to ghost ball, or ball surface to ball surface. */
  readonly distanceFrom: 'ghost-ball' | 'ball-to-ball';
  readonly speedUnit: SpeedUnit;
  readonly cutUnit: CutUnit;
  readonly tipUnit: TipUnit;
  /** What the answer leads with. */
  readonly lead: AimMark;
  readonly hand: 'right' | 'left';
  readonly theme: 'dark' | 'light' | 'system';
}

/** What the object ball has to hit: a mouth square across its way. */
export interface Pocket {
  readonly distanceM: number;
  readonly mouthM: number;
}

/** A shot, and how it lies on the table. */
export interface LaidShot extends Shot {
  /**
   * How its straight line runs over the table, rad: 0 is away from the break end, right +; null
   * where that has not been said.
   */
  readonly headingRad: number | null;
}

/** What the app opens with: the one record of the `desk` store. */
export interface Desk {
  readonly shot: LaidShot;
  /** A shot set aside to compare with, or null. */
  readonly heldShot: LaidShot | null;
  /** What was asked lately, no two alike; the newest first. */
  readonly recentShots: readonly Shot[];
  readonly choice: Choice;
  readonly preferences: Preferences;
  readonly pocket: Pocket;
  /** Who plays. */
  readonly playerId: string;
  /** The version of the engine's laws whose changes have been told of. */
  readonly law: number;
}
