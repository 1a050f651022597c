import { MOST_SHOTS } from '../engine/fit/fit-question';
import { PARTS } from '../engine/kit/kit-numbers';
import { type DoorRefusal, isRefusal, notTaken, refusedAt } from './door-refusal';
import { type GivenReading, parseReading } from './fit-reading';
import type { ShotSetting } from './fit-shot';
import { isFields } from './json-fields';

/** Different names of any one part: each brings unknowns of its own. */
const MOST_NAMES = 12;

/** All readings of a request, or why one of them cannot be taken. */
export function parseReadings(
  given: unknown,
  setting: ShotSetting,
): readonly GivenReading[] | DoorRefusal {
  if (!Array.isArray(given) || given.length > MOST_SHOTS) {
    return notTaken(
      'readings',
      `a list of at most ${MOST_SHOTS}`,
      `Give at most ${MOST_SHOTS} a line; [] where nothing has been read yet.`,
    );
  }
  const readings: GivenReading[] = [];
  for (const [index, one] of given.entries()) {
    const at = `readings[${index}]`;
    if (!isFields(one)) return notTaken(at, 'an object');
    const reading = parseReading(one, index + 1, setting);
    if (isRefusal(reading)) return refusedAt(at, reading);
    readings.push(reading);
  }
  return tooManyNames(readings) ?? readings;
}

function tooManyNames(readings: readonly GivenReading[]): DoorRefusal | null {
  const crowded = PARTS.find(
    (part) => new Set(readings.map(({ parts }) => parts[part])).size > MOST_NAMES,
  );
  if (crowded === undefined) return null;
  const wanted = `played with at most ${MOST_NAMES} of each part, and not more of ${crowded}`;
  return notTaken('readings', wanted, 'Give the readings of other kits on a line of their own.');
}
