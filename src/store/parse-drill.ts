import { type Rail, type Step, WAY_KINDS } from '../engine/goal/goal';
import type { BallName } from '../engine/lie/position';
import { isWithin } from '../engine/numerics/range';
import { STOPS } from '../engine/player/results';
import { STROKE_RANGES, type Stroke } from '../engine/stroke/stroke';
import { isFlag, isTime, isWithinAll } from './known-values';
import { isPlainObject } from './mend';
import { isId } from './parse-named';
import type { PlayedDrill, PlayedRung } from './player';
import { BED_RANGES } from './record-ranges';
import type { DrillTry, KeptDrill } from './saved-position';

const NUMBERS = { min: 1, max: 15 } as const;

export const isObjectBall = (was: unknown): was is number =>
  Number.isInteger(was) && isWithin(NUMBERS, was);

export const isBallName = (was: unknown): was is BallName => was === 'cue' || isObjectBall(was);

/** A way over the table: any direction at all. */
const HEADING_RANGE = { min: -2 * Math.PI, max: 2 * Math.PI } as const;
const STRUCK_RANGES = { ...STROKE_RANGES, aimRad: HEADING_RANGE };

/** Whether it is a stroke in the table's frame. */
export const isStruck = (was: unknown): was is Stroke => isWithinAll(STRUCK_RANGES, was);

/** Angles and logarithms of speeds: none that is meant is larger. */
const EDGE = { min: -4, max: 4 } as const;
/** A chance; and no spot is larger, m. */
const SHARE = { min: 0, max: 1 } as const;
const REST_RANGES = { ...BED_RANGES, radiusM: SHARE, low: EDGE, high: EDGE } as const;
const RUNG_RANGES = { chance: SHARE, room: EDGE } as const;

function isRung(was: unknown): was is PlayedRung {
  if (!isWithinAll(RUNG_RANGES, was)) return false;
  const { rest, stopped } = was as Record<string, unknown>;
  if (rest === null) return stopped === null;
  if (stopped !== null && !isOneOf(STOPS, stopped)) return false;
  return isWithinAll(REST_RANGES, rest) && (rest.low as number) < (rest.high as number);
}

/** What a played shot practised, or nothing. */
export function isPlayedDrill(was: unknown): was is PlayedDrill | null {
  if (was === null) return true;
  return isPlainObject(was) && isId(was.id) && (was.rung === null || isRung(was.rung));
}

const RAILS: readonly Rail[] = ['near', 'far', 'left', 'right'];
/** What is kept of the tries of one way, and of what happens on it: no way is told that has as many steps. */
export const MOST_TRIES = 500;

function isStep(was: unknown): was is Step {
  if (!isPlainObject(was) || !isBallName(was.by)) return false;
  return 'ball' in was ? isBallName(was.ball) : isOneOf(RAILS, was.cushion);
}

function isTry(was: unknown): was is DrillTry {
  return isPlainObject(was) && isId(was.playerId) && isTime(was.atMs) && isFlag(was.went);
}

/** A way kept to be played again, or none: half of one tells nothing. */
export function isDrillOrNone(was: unknown): was is KeptDrill | null {
  if (was === null) return true;
  if (!isPlainObject(was) || !isOneOf(WAY_KINDS, was.kind)) return false;
  return areAll(isStep, was.via) && areAll(isTry, was.tries) && isStruck(was.stroke);
}

const isOneOf = (all: readonly unknown[], was: unknown) => all.includes(was);

const areAll = (isOne: (was: unknown) => boolean, was: unknown) =>
  Array.isArray(was) && was.length <= MOST_TRIES && was.every(isOne);
