/**
 * The trials a player can do at a table. What each asks for and predicts is data: see `trials`.
 */
export const TRIAL_NAMES = ['line', 'curve', 'stop', 'throw', 'coast', 'pivot', 'speed'] as const;
export type TrialName = (typeof TRIAL_NAMES)[number];

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
 */
export const READING_NAMES = [
  'landingM',
  'timeS',
  'cueBallM',
  'objectBallM',
  'objectLandingM',
  'bridgeM',
  'runM',
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

/** Where things stand. What a trial does not use is 0. */
export interface TrialSetup {
  /** From the cue ball's centre (the object ball's, where that is read) to where it is read, m. */
  readonly distanceM: number;
  /** From the cue ball's centre to the ghost ball's, m. */
  readonly gapM: number;
  /** From the straight line to the line of centres, right +, rad. */
  readonly cutRad: number;
  /** Cushion to cushion along the shot, nose to nose, m. */
  readonly bedLengthM: number;
}

/** One shot of a trial, as set up and meant. */
export interface TrialShot {
  readonly trial: TrialName;
  readonly stroke: MeantStroke;
  readonly setup: TrialSetup;
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
} as const;

/**
 * Goes up when the model behind the predictions changes. Readings taken under an older one are
 * fitted anew by the present one; none is ever thrown away.
 */
export const MODEL_VERSION = 1;
