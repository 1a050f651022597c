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

const SHARE = { min: 0, max: 1 } as const;
/** A logarithm of a speed over another, and no line is off by more, rad. */
const ROOM = { min: 0, max: 4 } as const;
const EDGE = { min: -4, max: 4 } as const;
const REST_RANGES = {
  xM: BED_RANGES.xM,
  yM: BED_RANGES.yM,
  radiusM: { min: 0.001, max: 2 },
  low: EDGE,
  high: EDGE,
} as const;

function isRung(was: unknown): was is PlayedRung {
  if (!isPlainObject(was) || !isWithin(SHARE, was.chance) || !isWithin(ROOM, was.room))
    return false;
  const { rest, stopped } = was;
  if (stopped !== null && !STOPS.some((one) => one === stopped)) return false;
  return rest === null ? stopped === null : isWithinAll(REST_RANGES, rest);
}

/** What a played shot practised, or nothing. */
export function isPlayedDrill(was: unknown): was is PlayedDrill | null {
  if (was === null) return true;
  return isPlainObject(was) && isId(was.id) && (was.rung === null || isRung(was.rung));
}

const RAILS: readonly Rail[] = ['near', 'far', 'left', 'right'];
/** More happens on no way that is told. */
const MOST_STEPS = 12;
/** What is kept of the tries of one way: the newest. */
export const MOST_TRIES = 500;

function isStep(was: unknown): was is Step {
  if (!isPlainObject(was) || !isBallName(was.by)) return false;
  return 'ball' in was ? isBallName(was.ball) : RAILS.some((rail) => rail === was.cushion);
}

function isTry(was: unknown): was is DrillTry {
  return isPlainObject(was) && isId(was.playerId) && isTime(was.atMs) && isFlag(was.went);
}

/** A way kept to be played again, or none: half of one tells nothing. */
export function isDrillOrNone(was: unknown): was is KeptDrill | null {
  if (was === null) return true;
  if (!isPlainObject(was) || !WAY_KINDS.some((kind) => kind === was.kind)) return false;
  const { via, tries, stroke } = was;
  return (
    isShortList(via, MOST_STEPS) &&
    via.every(isStep) &&
    isShortList(tries, MOST_TRIES) &&
    tries.every(isTry) &&
    isStruck(stroke)
  );
}

const isShortList = (was: unknown, most: number): was is readonly unknown[] =>
  Array.isArray(was) && was.length <= most;
