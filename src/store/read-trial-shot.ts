import {
  type MeantStroke,
  SPEED_WORDS,
  TRIAL_NAMES,
  TRIAL_RANGES,
  type TrialSetup,
  type TrialShot,
} from '../engine/fit/trial-shot';
import { isWithin, type Range } from '../engine/numerics/range';
import { isPlainObject } from './mend';

type Ranges<Name extends string> = { readonly [N in Name]: Range };

const STROKE_RANGES: Ranges<Exclude<keyof MeantStroke, 'speedWord'>> = {
  headingRad: TRIAL_RANGES.headingRad,
  side: TRIAL_RANGES.side,
  height: TRIAL_RANGES.height,
  elevationRad: TRIAL_RANGES.elevationRad,
  speedMps: TRIAL_RANGES.speedMps,
};

const SETUP_RANGES: Ranges<keyof TrialSetup> = {
  distanceM: TRIAL_RANGES.distanceM,
  gapM: TRIAL_RANGES.gapM,
  cutRad: TRIAL_RANGES.cutRad,
  bedLengthM: TRIAL_RANGES.bedLengthM,
};

/** Whether a shot was set up and meant as it says: nothing of that can be mended. */
export function isTrialShot(was: unknown): was is TrialShot {
  if (!isPlainObject(was)) return false;
  const { trial, stroke, setup } = was;
  return (
    TRIAL_NAMES.some((name) => name === trial) &&
    isStroke(stroke) &&
    isWithinAll(SETUP_RANGES, setup)
  );
}

function isStroke(was: unknown): boolean {
  if (!isPlainObject(was)) return false;
  const { speedWord } = was;
  const isWordKnown = speedWord === null || SPEED_WORDS.some((word) => word === speedWord);
  return isWordKnown && isWithinAll(STROKE_RANGES, was);
}

function isWithinAll(ranges: Ranges<string>, was: unknown): boolean {
  if (!isPlainObject(was)) return false;
  return Object.entries(ranges).every(([name, range]) => isWithin(range, was[name]));
}
