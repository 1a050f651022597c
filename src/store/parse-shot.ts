import { INPUT_RANGES } from '../engine/direct/input-ranges';
import type { Shot } from '../engine/direct/shot';
import { TRIAL_RANGES } from '../engine/fit/trial-shot';
import { DEFAULT_SHOT } from './default-desk';
import {
  isPlainObject,
  type Mend,
  mendAbsent,
  mendNumber,
  mendObject,
  mendOrNull,
  within,
} from './mend';
import { numberAt } from './number-at';
import type { LaidShot } from './records';

const mendInputs = mendObject<Omit<Shot, 'objectDistanceM'>>({
  distanceM: mendNumber(INPUT_RANGES.distanceM, DEFAULT_SHOT.distanceM),
  cutRad: mendNumber(INPUT_RANGES.cutRad, DEFAULT_SHOT.cutRad),
  side: mendNumber(INPUT_RANGES.side, DEFAULT_SHOT.side),
  height: mendNumber(INPUT_RANGES.height, DEFAULT_SHOT.height),
  elevationRad: mendNumber(INPUT_RANGES.elevationRad, DEFAULT_SHOT.elevationRad),
  speedMps: mendNumber(INPUT_RANGES.speedMps, DEFAULT_SHOT.speedMps),
});

/** Whether anything is left of a shot: one without a single number of its own would be invented. */
export function isShotLeft(was: unknown): boolean {
  return (
    isPlainObject(was) && Object.keys(INPUT_RANGES).some((name) => numberAt(was, name) !== null)
  );
}

/** Mends a shot. An unreadable object-ball distance is left out: every distance will do. */
export const mendShot: Mend<Shot> = (was, field, note) => {
  const { objectDistanceM, ...shot }: Record<string, unknown> & Omit<Shot, 'objectDistanceM'> = {
    ...mendInputs(was, field, note),
  };
  if (objectDistanceM === undefined) return shot;
  const path = within(field, 'objectDistanceM');
  if (typeof objectDistanceM !== 'number' || !Number.isFinite(objectDistanceM)) {
    note(path, objectDistanceM, undefined);
    return shot;
  }
  const mended = mendNumber(INPUT_RANGES.objectDistanceM, objectDistanceM);
  return { ...shot, objectDistanceM: mended(objectDistanceM, path, note) };
};

const mendHeading = mendAbsent(null, mendOrNull(TRIAL_RANGES.headingRad));

/** Mends a shot, and how it lies on the table. */
export const mendLaidShot: Mend<LaidShot> = (was, field, note) => {
  const shot: Shot & { headingRad?: unknown } = mendShot(was, field, note);
  return { ...shot, headingRad: mendHeading(shot.headingRad, within(field, 'headingRad'), note) };
};
