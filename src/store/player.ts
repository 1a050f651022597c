import type { Shot } from '../engine/direct/shot';
import type { Pot } from '../engine/goal/goal';
import type { Target } from '../engine/goal/target';
import type { Kit } from '../engine/kit/kit';
import type { KitSpread } from '../engine/kit/kit-spread';
import type { NamedBall } from '../engine/lie/position';
import type { AskedRest } from '../engine/player/drill-shot';
import type { Stopped } from '../engine/player/known-player';
import type { Result } from '../engine/player/shot-line';
import type { Stroke } from '../engine/stroke/stroke';
import type { Point } from '../engine/table/point';

/** Somebody whose shots are told for, and kept. */
export interface Player {
  readonly id: string;
  readonly name: string;
  /** How many of ten of the question's shot they say they make, 0 to 10; null: not said. */
  readonly madeOf10: number | null;
  /** Whether the question was answered or put aside. */
  readonly wasAsked: boolean;
  readonly createdAtMs: number;
  readonly changedAtMs: number;
}

/** Where a shot of Choose lay, and what was meant there. */
export interface PlayedPosition {
  /** Of the table it lay on, nose to nose. */
  readonly lengthM: number;
  readonly widthM: number;
  readonly balls: readonly NamedBall[];
  readonly goal: Pot;
  /** As it was to be struck, in the table's frame: `aimRad` is its heading, 0 away from the break end. */
  readonly stroke: Stroke;
}

/** A shot of a ladder, as it was asked. */
export interface PlayedRung {
  /** How often the player was taken to make it, 0 to 1. */
  readonly chance: number;
  /** How far the line may be off either way, rad; where the cue ball is to rest, the logarithm of the speed. */
  readonly room: number;
  /** Where the cue ball is to rest as well; null: anywhere. */
  readonly rest: AskedRest | null;
  /** Where it stopped of that; null: not said, or the ball did not go. */
  readonly stopped: Stopped | null;
}

/** What a shot was played to practise. */
export interface PlayedDrill {
  /** A ladder's theme, or the id of a way kept to be played again. */
  readonly id: string;
  /** Null of a way that was kept. */
  readonly rung: PlayedRung | null;
}

/**
 * A shot that was played: what was asked, with all that the answer hung on, and what became of it. What
 * it tells of the player is worked out from it, and never stored.
 */
export interface PlayedShot {
  readonly id: string;
  readonly playerId: string;
  readonly atMs: number;
  /** Of the engine's predictions, when it was asked. */
  readonly modelVersion: number;
  readonly shot: Shot;
  /** The direction aimed in, from the straight line, rad, right +. */
  readonly aimRad: number;
  readonly target: Target;
  /** As seen along the straight line, and how little of it was known. */
  readonly kit: Kit;
  readonly spread: KitSpread;
  /** Null where the shot was not laid on a table. */
  readonly position: PlayedPosition | null;
  readonly result: Result;
  /** Whether the cue ball fell. */
  readonly scratched: boolean;
  /** Where the cue ball stopped, in the table's frame; null: not said. */
  readonly cueBall: Point | null;
  /** Whether it was struck as it was meant. One that was not is kept, and nothing is learnt from it. */
  readonly asMeant: boolean;
  /** The level test it belongs to; null: none. */
  readonly testId: string | null;
  /** What it was played to practise; null: nothing. */
  readonly drill: PlayedDrill | null;
}
