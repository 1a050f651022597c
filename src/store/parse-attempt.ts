import { isWithin } from '../engine/numerics/range';
import type { Attempt, TypedDraft } from './attempt';
import type { ParsedRow, Repair } from './contents';
import { isPlainObject, mendList, mendObject, mendUnless } from './mend';
import { mendButt, mendReadings } from './mend-readings';
import { isId } from './parse-named';
import { isTrialShot } from './read-trial-shot';
import { TIME_RANGE_MS } from './record-ranges';
import { SHELF_NAMES } from './shelf-names';

/** Longer than anything typed on a keypad, or the name of any step. */
const LONGEST_WORD = 60;
const MOST_STEPS = 60;

const isWord = (was: unknown): was is string =>
  typeof was === 'string' && was.length <= LONGEST_WORD;

/** Whether it says what it was played with, and how: without that, readings tell nothing. */
function isPlayed(
  was: Record<string, unknown>,
): was is Pick<Attempt, 'choice' | 'shot'> & typeof was {
  const { choice, shot } = was;
  return (
    isPlainObject(choice) && SHELF_NAMES.every((shelf) => isId(choice[shelf])) && isTrialShot(shot)
  );
}

const isTime = (was: unknown): was is number => isWithin(TIME_RANGE_MS, was);
const isCount = (was: unknown): was is number => Number.isSafeInteger(was) && Number(was) > 0;
const isFlag = (was: unknown): was is boolean => typeof was === 'boolean';
const isDraft = (was: unknown): was is TypedDraft | null =>
  was === null || (isPlainObject(was) && isWord(was.step) && isWord(was.text));

/**
 * A valid attempt out of anything found among them. Beyond repair is one whose kit, stroke or set-up
 * cannot be made out. Of the rest, a time that cannot be read becomes the oldest there is, from
 * before anything about the kit was changed.
 */
export function parseAttempt(raw: unknown): ParsedRow<Attempt> {
  if (!isPlainObject(raw)) return { ok: false, reason: 'not-a-record' };
  const id = raw.id;
  if (!isId(id)) return { ok: false, reason: 'no-id' };
  if (!isPlayed(raw)) return { ok: false, reason: 'unreadable' };
  const { choice, shot } = raw;
  const mend = mendObject<Attempt>({
    id: () => id,
    startedAtMs: mendUnless(isTime, 0),
    modelVersion: mendUnless(isCount, 1),
    choice: () => choice,
    shot: () => shot,
    readings: mendReadings,
    butt: mendButt,
    stepsDone: mendList(MOST_STEPS, isWord, String),
    typed: mendUnless(isDraft, null),
    isStruckOut: mendUnless(isFlag, false),
  });
  const repairs: Repair[] = [];
  const record = mend(raw, '', (field, was, now) => {
    repairs.push({ store: 'attempts', id, field, was, now });
  });
  return { ok: true, record, repairs };
}
