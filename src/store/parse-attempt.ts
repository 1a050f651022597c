import {
  type MeantStroke,
  READING_NAMES,
  READING_RANGES,
  type Readings,
  SPEED_WORDS,
  TRIAL_RANGES,
  type TrialSetup,
} from '../engine/fit/trials/trial';
import { TRIAL_TRAITS } from '../engine/fit/trials/trial-traits';
import type { TrialShot } from '../engine/fit/trials/trials';
import { isWithin, type Range } from '../engine/numerics/range';
import type { Attempt, ButtReading, TypedDraft } from './attempt';
import type { ParsedRow } from './contents';
import { isCount, isFlag, isTime, isWithinAll } from './known-values';
import {
  isPlainObject,
  type Mend,
  mendList,
  mendNumber,
  mendObject,
  mendOrNone,
  mendUnless,
} from './mend';
import { isId, parseWithId } from './parse-named';
import { BUTT_RANGES } from './record-ranges';
import { SHELF_NAMES } from './records';

/**
 * Leaves out every reading that cannot have been read. None is ever moved into range: that would be
 * inventing one. Readings of other names are kept for the version that knows them.
 */
const mendReadings: Mend<Readings> = (was, field, note) => {
  if (!isPlainObject(was)) {
    note(field, was, {});
    return {};
  }
  const kept: Record<string, unknown> = { ...was };
  for (const name of READING_NAMES) {
    if (!(name in kept) || isWithin(READING_RANGES[name], kept[name])) continue;
    note(`${field}.${name}`, kept[name], undefined);
    delete kept[name];
  }
  return kept;
};

/** A butt higher than its cue is long was misread. */
function canHaveBeenRead(was: unknown): boolean {
  if (!isPlainObject(was)) return false;
  const { buttHeightM, cueLengthM } = was;
  return (
    isWithin(BUTT_RANGES.buttHeightM, buttHeightM) &&
    isWithin(BUTT_RANGES.cueLengthM, cueLengthM) &&
    buttHeightM < cueLengthM
  );
}

/** Leaves out a measured elevation that cannot have been read; it is then as it was meant. */
const mendButt: Mend<ButtReading | null> = mendOrNone(
  canHaveBeenRead,
  mendObject<ButtReading>({
    buttHeightM: mendNumber(BUTT_RANGES.buttHeightM, 0),
    cueLengthM: mendNumber(BUTT_RANGES.cueLengthM, 0),
  }),
);

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
function isTrialShot(was: unknown): was is TrialShot {
  if (!isPlainObject(was)) return false;
  const { trial, stroke, setup } = was;
  return (
    Object.keys(TRIAL_TRAITS).some((name) => name === trial) &&
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

const isDraft = (was: unknown): was is TypedDraft | null =>
  was === null || (isPlainObject(was) && isWord(was.step) && isWord(was.text));

/**
 * A valid attempt out of anything found among them. Beyond repair is one whose kit, stroke or set-up
 * cannot be made out. Of the rest, a time that cannot be read becomes the oldest there is, from
 * before anything about the kit was changed.
 */
export function parseAttempt(raw: unknown): ParsedRow<Attempt> {
  return parseWithId('attempts', raw, (row, id) => {
    if (!isPlayed(row)) return 'unreadable';
    const { choice, shot } = row;
    return mendObject<Attempt>({
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
  });
}
