import { type SpeedWord, TRIAL_RANGES } from '../engine/fit/trials/trial';
import type { TrialName, TrialShot } from '../engine/fit/trials/trials';
import { DEG_PER_RAD } from '../engine/numerics/angle';
import type { Range } from '../engine/numerics/range';

/** The figures of a trial's shot as they go through the door: metres and degrees, right +. */
export interface Figures {
  readonly side: number;
  readonly height: number;
  readonly elevationDeg: number;
  readonly speedMps: number;
  readonly distanceM: number;
  readonly gapM: number;
  readonly cutDeg: number;
  readonly headingDeg: number;
  readonly tableLengthM: number;
}

export type FigureName = keyof Figures;

/** What the door takes of each. A table is one that a trial can be done on. */
export const FIGURE_RANGES: { readonly [N in FigureName]: Range } = {
  side: TRIAL_RANGES.side,
  height: TRIAL_RANGES.height,
  elevationDeg: inDegrees(TRIAL_RANGES.elevationRad),
  speedMps: TRIAL_RANGES.speedMps,
  distanceM: TRIAL_RANGES.distanceM,
  gapM: TRIAL_RANGES.gapM,
  cutDeg: inDegrees(TRIAL_RANGES.cutRad),
  headingDeg: inDegrees(TRIAL_RANGES.headingRad),
  tableLengthM: { min: 1, max: TRIAL_RANGES.bedLengthM.max },
};

export const FIGURE_NAMES = Object.keys(FIGURE_RANGES) as FigureName[];

/** The figures of a shot. */
export function figuresOf({ stroke, setup }: TrialShot): Figures {
  return {
    side: stroke.side,
    height: stroke.height,
    elevationDeg: tidyDegrees(stroke.elevationRad),
    speedMps: stroke.speedMps,
    distanceM: setup.distanceM,
    gapM: setup.gapM,
    cutDeg: tidyDegrees(setup.cutRad),
    headingDeg: tidyDegrees(stroke.headingRad),
    tableLengthM: setup.bedLengthM,
  };
}

/** The shot of some figures. */
export function shotOf(trial: TrialName, figures: Figures, speedWord: SpeedWord | null): TrialShot {
  const { side, height, speedMps, distanceM, gapM } = figures;
  return {
    trial,
    stroke: {
      headingRad: figures.headingDeg / DEG_PER_RAD,
      side,
      height,
      elevationRad: figures.elevationDeg / DEG_PER_RAD,
      speedMps,
      speedWord,
    },
    setup: {
      distanceM,
      gapM,
      cutRad: figures.cutDeg / DEG_PER_RAD,
      bedLengthM: figures.tableLengthM,
    },
  };
}

/** To a millionth of a degree: more would be the rounding of π. */
export function tidyDegrees(angleRad: number): number {
  return Number((angleRad * DEG_PER_RAD).toFixed(6));
}

function inDegrees({ min, max }: Range): Range {
  return { min: tidyDegrees(min), max: tidyDegrees(max) };
}
