import type { Kit } from '../kit/kit';
import type { Stroke } from '../stroke/stroke';
import { predictCoast } from './predict-coast';
import { predictLanding } from './predict-landing';
import { predictObjectLanding, predictRunsAfter } from './predict-pair';
import { predictPivot } from './predict-pivot';
import { predictRun } from './predict-run';
import type { ReadingName, Readings, TrialName, TrialSetup } from './trial-shot';

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

/** A trial is what is read and what would be: the rest follows. */
export interface Trial {
  readonly name: TrialName;
  /** In the order in which they are taken. */
  readonly readings: readonly ReadingSpec[];
  readonly predict: Predict;
  /** How many strokes one set of readings takes. */
  readonly strokes: number;
}

/** Of a tape or a sight along a cushion, m (our estimate). */
const TAPE = { sd: 0.01, isShare: false } as const;
/** Of two taps of a thumb, s (our estimate). */
const THUMB = { sd: 0.15, isShare: false } as const;

/** Every trial. A new one is a row here, and shots of it among those that can be done. */
export const TRIALS: { readonly [N in TrialName]: Trial } = {
  line: {
    name: 'line',
    readings: [{ name: 'landingM', ...TAPE }],
    predict: predictLanding,
    strokes: 1,
  },
  curve: {
    name: 'curve',
    readings: [
      { name: 'timeS', ...THUMB },
      { name: 'landingM', ...TAPE },
    ],
    predict: predictLanding,
    strokes: 1,
  },
  stop: {
    name: 'stop',
    readings: [
      { name: 'cueBallM', ...TAPE },
      { name: 'objectBallM', ...TAPE },
    ],
    predict: predictRunsAfter,
    strokes: 1,
  },
  throw: {
    name: 'throw',
    readings: [{ name: 'objectLandingM', ...TAPE }],
    predict: predictObjectLanding,
    strokes: 1,
  },
  coast: {
    name: 'coast',
    readings: [{ name: 'timeS', ...THUMB }],
    predict: predictCoast,
    strokes: 1,
  },
  // The bridge is felt for in several strokes; how closely is our estimate.
  pivot: {
    name: 'pivot',
    readings: [{ name: 'bridgeM', sd: 0.12, isShare: true }],
    predict: predictPivot,
    strokes: 6,
  },
  speed: {
    name: 'speed',
    readings: [{ name: 'runM', sd: 0.06, isShare: true }],
    predict: predictRun,
    strokes: 1,
  },
};
