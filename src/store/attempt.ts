import type { Readings } from '../engine/fit/trials/trial';
import type { TrialShot } from '../engine/fit/trials/trials';
import type { Choice } from './records';

/** How the cue's elevation was measured: the butt's height above the cloth, and the cue's length. */
export interface ButtReading {
  readonly buttHeightM: number;
  readonly cueLengthM: number;
}

/** Digits on the keypad that have not been entered yet. */
export interface TypedDraft {
  readonly step: string;
  readonly text: string;
}

/**
 * One shot of a trial, from its set-up to its last reading: the record of what was read. What it
 * tells of the kit is worked out from it, and never stored.
 */
export interface Attempt {
  readonly id: string;
  readonly startedAtMs: number;
  /** Of the engine's predictions, when it was taken. */
  readonly modelVersion: number;
  /** The records it was played with. */
  readonly choice: Choice;
  readonly shot: TrialShot;
  readonly readings: Readings;
  /** Null where the elevation is as meant. */
  readonly butt: ButtReading | null;
  /** Steps of the trial that are done, in order: it goes on at the next. */
  readonly stepsDone: readonly string[];
  readonly typed: TypedDraft | null;
  /** Left out of the fit by the player; kept all the same. */
  readonly isStruckOut: boolean;
}
