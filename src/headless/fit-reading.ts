import type { Parts } from '../engine/fit/fit-question';
import { READING_RANGES, type ReadingName, type Readings } from '../engine/fit/trials/trial';
import { TRIAL_NAMES, TRIALS, type TrialName, type TrialShot } from '../engine/fit/trials/trials';
import { isWithin } from '../engine/numerics/range';
import { type DoorRefusal, isRefusal, notTaken, span } from './door-refusal';
import { parseParts } from './fit-parts';
import { parseTrialShot, type ShotSetting } from './fit-shot';
import { type Fields, isFields } from './json-fields';

/** A shot of a trial and what was read of it, as it came in. */
export interface GivenReading {
  /** Whatever the request called it. */
  readonly id: unknown;
  readonly shot: TrialShot;
  readonly readings: Readings;
  readonly parts: Parts;
}

/**
 * A shot of a trial with what was read of it, or why it cannot be taken.
 *
 * @param place in the list, from 1; stands for an id that was left out
 */
export function parseReading(
  given: Fields,
  place: number,
  setting: ShotSetting,
): GivenReading | DoorRefusal {
  const { id = place, trial } = given;
  if (!isTrial(trial)) return notTaken('trial', `one of ${TRIAL_NAMES.join(', ')}`);
  const shot = parseTrialShot(given, trial, setting);
  if (isRefusal(shot)) return shot;
  const readings = parseRead(given.read, trial);
  if (isRefusal(readings)) return readings;
  const parts = parseParts(given.kit, 'kit');
  return isRefusal(parts) ? parts : { id, shot, readings, parts };
}

function isTrial(value: unknown): value is TrialName {
  return TRIAL_NAMES.some((name) => name === value);
}

function parseRead(read: unknown, trial: TrialName): Readings | DoorRefusal {
  const names = TRIALS[trial].readings.map(({ name }) => name);
  const given = isFields(read) ? Object.entries(read) : [];
  if (given.length === 0 || !given.every(([key]) => names.some((name) => name === key))) {
    return notTaken('read', `an object of ${names.join(', ')}`);
  }
  const readings: Partial<Record<ReadingName, number>> = {};
  for (const name of names) {
    const value = isFields(read) ? read[name] : undefined;
    if (value === undefined) continue;
    if (!isWithin(READING_RANGES[name], value)) {
      return notTaken(`read.${name}`, span(READING_RANGES[name]));
    }
    readings[name] = value;
  }
  return readings;
}
