import type { Kit } from '../../kit/kit';
import type { Part } from '../../kit/kit-numbers';
import type { Stroke } from '../../stroke/stroke';

/** What a player calls a cue-ball speed; how hard that is, is the player's own. */
export const SPEED_WORDS = ['soft', 'medium', 'firm'] as const;
export type SpeedWord = (typeof SPEED_WORDS)[number];

/**
 * What can be read off the table or a watch. Lengths in m, times in s.
 * - `landingM`: where the cue ball touches the far cushion, right + of the meant line.
 * - `timeS`: from the tip to that touch; of a coasting ball, from the mark to its rest.
 * - `cueBallM`, `objectBallM`: how far a ball runs on after the two meet; back is −.
 * - `objectLandingM`: where the object ball touches the far cushion, right + of the table's middle.
 * - `bridgeM`: from the cue ball's near surface back to the bridge.
 * - `runM`: the cue ball's whole run, cushions counted.
 * - `upM`: how far up the table, from the break end's nose, the cue ball touches the second rail.
 */
export const READING_NAMES = [
  'landingM',
  'timeS',
  'cueBallM',
  'objectBallM',
  'objectLandingM',
  'bridgeM',
  'runM',
  'upM',
] as const;
export type ReadingName = (typeof READING_NAMES)[number];

/** The readings of one shot, as far as they have been taken. */
export type Readings = { readonly [N in ReadingName]?: number };

/** A stroke as the player means it. Signs as in a shot: right and up are +. */
export interface MeantStroke {
  /** Direction of the straight line over the table: 0 runs away from the break end, right +, rad. */
  readonly headingRad: number;
  readonly side: number;
  readonly height: number;
  readonly elevationRad: number;
  /** Horizontal speed off the tip, m/s; where a word is given, what that word is taken to mean. */
  readonly speedMps: number;
  /** The player's own word for it, or null where the speed is known as a figure. */
  readonly speedWord: SpeedWord | null;
}

/** Where things stand. What a trial does not hang on is 0. */
export interface TrialSetup {
  /** From the cue ball's centre (the object ball's, where that is read) to where it is read, m. */
  readonly distanceM: number;
  /** From the cue ball's centre to the ghost ball's, m. */
  readonly gapM: number;
  /** From the straight line to the line of centres, or to the line square into a rail, right +, rad. */
  readonly cutRad: number;
  /** Cushion to cushion along the shot, nose to nose, m. */
  readonly bedLengthM: number;
}

/** What the engine accepts of a trial's stroke and set-up. */
export const TRIAL_RANGES = {
  headingRad: { min: -2 * Math.PI, max: 2 * Math.PI },
  side: { min: -0.5, max: 0.5 },
  height: { min: -0.5, max: 0.5 },
  elevationRad: { min: 0, max: Math.PI / 4 },
  speedMps: { min: 0.1, max: 6 },
  distanceM: { min: 0, max: 4 },
  gapM: { min: 0, max: 4 },
  cutRad: { min: -Math.PI / 3, max: Math.PI / 3 },
  bedLengthM: { min: 0, max: 4 },
} as const;

/** What a reading can be, in its own unit. */
export const READING_RANGES = {
  landingM: { min: -1.5, max: 1.5 },
  timeS: { min: 0.05, max: 60 },
  cueBallM: { min: -3, max: 3 },
  objectBallM: { min: 0, max: 4 },
  objectLandingM: { min: -1.5, max: 1.5 },
  bridgeM: { min: 0.02, max: 1.5 },
  runM: { min: 0.05, max: 40 },
  upM: { min: 0, max: 4 },
} as const;

/** The table the trials are done on. */
export interface TrialBed {
  /** Nose to nose, m. */
  readonly lengthM: number;
  readonly ballRadiusM: number;
}

/**
 * What a kit and a stroke would make one read; null where they would leave nothing to read.
 *
 * @param kit its bed's slope as seen along the meant line
 * @param stroke its aim is measured from the meant line, right +
 */
export type Predict = (kit: Kit, stroke: Stroke, setup: TrialSetup) => Readings | null;

/** What is read, and how well: one standard deviation, in its unit or as a share of it. */
export interface ReadingSpec {
  readonly name: ReadingName;
  readonly sd: number;
  readonly isShare: boolean;
}

/** Of a tape or a sight along a cushion, m (our estimate). */
export const TAPE = { sd: 0.01, isShare: false } as const;
/** Of two taps of a thumb, s (our estimate). */
export const THUMB = { sd: 0.15, isShare: false } as const;

/**
 * A level shot comes before one with the cue raised where it teaches this share as much: no risk to
 * the cloth, and nothing to set up anew (our judgement).
 */
export const LEVEL_SHARE = 0.5;

/** What a trial asks of whoever does it. */
export interface TrialTraits {
  /** In the order in which they are taken; one of a time is taken by two taps while it is played. */
  readonly readings: readonly ReadingSpec[];
  /** How many strokes one set of readings takes: more than one where it is tried until it works. */
  readonly strokes: number;
  /** The parts of a kit that its readings may tell of. */
  readonly tells: readonly Part[];
  /** Whether the butt is raised: its height is measured, and the cloth is at risk. */
  readonly isRaised?: boolean;
  /** Whether a hand rolls the ball, instead of a cue; how far it went is then read too. */
  readonly isRolledByHand?: boolean;
}

/** One of the trials a player can do at a table: all that the rest of the program asks of it. */
export interface Trial extends TrialTraits {
  readonly name: string;
  readonly predict: Predict;
  /** The shots of it that can be done on a table. */
  readonly shots: (bed: TrialBed) => readonly { stroke: MeantStroke; setup: TrialSetup }[];
  /** What of a set-up its readings hang on. */
  readonly hangsOn: readonly (keyof TrialSetup)[];
  /** Level, and done within minutes by one person: its place among those to begin with. */
  readonly beginWith?: number;
  /** A trial of the same shot to be done before this one, which is harder. */
  readonly after?: string;
  /** How the straight line lies over the table, where its cut tells that; rad, as a heading. */
  readonly headingOf?: (cutRad: number) => number;
}
