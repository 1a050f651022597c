import type { ReadingName } from '../engine/fit/trials/trial';
import type { TrialShot } from '../engine/fit/trials/trials';

/** A spot on the bed, m: x right of its middle line, y from the break end's nose, as seen from there. */
export interface TableSpot {
  readonly xM: number;
  readonly yM: number;
}

export interface TableLine {
  readonly from: TableSpot;
  readonly to: TableSpot;
}

export type BallKind = 'cue' | 'object' | 'ghost' | 'rest';

/** What the drawing of a trial shows, in the world. */
export interface TrialScene {
  /** Nose to nose, m; the width is half of it. */
  readonly lengthM: number;
  readonly ballRadiusM: number;
  readonly balls: readonly { readonly kind: BallKind; readonly at: TableSpot }[];
  /** Where to point the cue. */
  readonly aim: TableLine | null;
  /** The way a ball is expected to go. */
  readonly path: TableLine | null;
  /** What is to be read. */
  readonly reading: TableLine | null;
  /** Coins on the right rail, the first beside what is read first. */
  readonly coins: readonly TableSpot[];
  /** A line across the bed from which a ball is timed. */
  readonly mark: TableLine | null;
  /** How many diamonds to count up both long rails. */
  readonly countTo: number;
  /** Whether the far rail carries a rule from its middle diamond. */
  readonly hasRule: boolean;
  /** The stretch of the bed in view, m from the break end's nose. */
  readonly view: { readonly fromYM: number; readonly toYM: number };
}

/** What is being done, as far as the drawing cares. */
export type SceneStep = 'set-up' | ReadingName | 'distance';

/** What a scene is set up from. */
export interface SceneSetting {
  readonly shot: TrialShot;
  readonly ballRadiusM: number;
  readonly lengthM: number;
  readonly step: SceneStep;
  /** The expected landing, right + of the meant line, or null where none is shown. */
  readonly expectedM: number | null;
}

/** What of a scene is its trial's own. */
export type ScenePart = (setting: SceneSetting) => Partial<TrialScene>;

/** Sets up what a trial's drawing shows. */
export function trialScene(setting: SceneSetting, part: ScenePart): TrialScene {
  const { lengthM, ballRadiusM } = setting;
  const blank: TrialScene = {
    lengthM,
    ballRadiusM,
    balls: [],
    aim: null,
    path: null,
    reading: null,
    coins: [],
    mark: null,
    countTo: 2,
    hasRule: false,
    view: { fromYM: 0, toYM: lengthM },
  };
  return { ...blank, ...part(setting) };
}

/** A spot on the middle line. */
export const middle = (yM: number): TableSpot => ({ xM: 0, yM });

/** Of a ball that is played or runs to the far cushion from this far before it. */
export function spotOf({ shot, ballRadiusM, lengthM }: SceneSetting): TableSpot {
  return middle(lengthM - ballRadiusM - shot.setup.distanceM);
}
