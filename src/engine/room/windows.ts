import { goes, type MissOrLost, missAt, type Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { bracketedRoot } from '../numerics/bracketed-root';
import { dipThroughZero } from '../numerics/dip-through-zero';
import { STROKE_RANGES, type Stroke } from '../stroke/stroke';

/**
 * What ends a window: the ball goes wide on the thin or the full side (left or right where there is
 * no cut), the cue ball misses, the object ball stops short, the tip would slip, or the input's own
 * range is out; of a way with more to it, another ball comes between, two meet once too often, or one
 * comes to a cushion or a pocket that is not on its way.
 */
export type EndedBy =
  | 'thin'
  | 'full'
  | 'left'
  | 'right'
  | 'untouched'
  | 'short'
  | 'miscue'
  | 'other-ball'
  | 'kiss'
  | 'other-way'
  | 'range';

export interface WindowEnd {
  readonly value: number;
  readonly endedBy: EndedBy;
}

/** The values of one input, in its own unit, for which the ball still goes, the others held. */
export interface RoomWindow {
  readonly low: WindowEnd;
  readonly high: WindowEnd;
  /**
   * Change of the object ball's direction, rad right +, per unit of the input, at its value now; null
   * where a nudge either way loses the object ball.
   */
  readonly directionPerUnit: number | null;
}

export type RoomWindows = { readonly [I in keyof Stroke]: RoomWindow };

/** A step off the present value for a slope, in each input's own unit. */
const NUDGES: Stroke = {
  aimRad: 1e-6,
  speedMps: 1e-5,
  side: 1e-5,
  height: 1e-5,
  elevationRad: 1e-5,
};

/**
 * How far each input may be off, the others held, and the ball still goes: the stretch of each that
 * holds the present value, by real roots of the real engine.
 *
 * @param stroke one that goes; its aim is usually a solved one
 * @returns null where the stroke does not go to begin with
 */
export function roomWindows(task: Task, kit: Kit, stroke: Stroke): RoomWindows | null {
  if (!goes(missAt(task, kit, stroke))) return null;
  const windowOf = (input: keyof Stroke) => roomWindow(task, kit, stroke, input);
  return {
    aimRad: windowOf('aimRad'),
    speedMps: windowOf('speedMps'),
    side: windowOf('side'),
    height: windowOf('height'),
    elevationRad: windowOf('elevationRad'),
  };
}

/** How far one input may be off, of a stroke that goes. */
export function roomWindow(task: Task, kit: Kit, stroke: Stroke, input: keyof Stroke): RoomWindow {
  const missOf = (value: number) => missAt(task, kit, { ...stroke, [input]: value });
  const limit = STROKE_RANGES[input];
  const directionPerUnit = directionSlope(task, kit, stroke, input);
  const missPerUnit = (directionPerUnit ?? 0) / task.allowedRad;
  const edge = (to: number) => edgeTowards(missOf, stroke[input], to, missPerUnit, task.thinSide);
  return { low: edge(limit.min), high: edge(limit.max), directionPerUnit };
}

/**
 * Change of the object ball's direction, rad right +, per unit of an input: by a nudge one way alone
 * where one the other way loses the object ball; null where either does.
 */
export function directionSlope(
  task: Task,
  kit: Kit,
  stroke: Stroke,
  input: keyof Stroke,
): number | null {
  const present = stroke[input];
  const directionOf = (value: number) => task.directionAt(kit, { ...stroke, [input]: value });
  const { min, max } = STROKE_RANGES[input];
  const nudged = [Math.max(min, present - NUDGES[input]), Math.min(max, present + NUDGES[input])];
  const [low = present, high = present] = nudged.map((value) =>
    typeof directionOf(value) === 'number' ? value : present,
  );
  const [atLow, atHigh] = [directionOf(low), directionOf(high)];
  const isKnown = typeof atLow === 'number' && typeof atHigh === 'number' && low < high;
  return isKnown ? (atHigh - atLow) / (high - low) : null;
}

/** The march's first step aims at this change of the miss, and a step may change it by twice that. */
const STEP_SHARE = 0.2;
const MOST_STEP_SHARE = 0.4;
const LEAST_STEP_SHARE = 0.02;
/** Steps over a whole range where the miss does not change at all. */
const RANGE_STEPS = 128;
/** Relative to the range: ends closer than this are one. */
const EDGE_TOLERANCE = 1e-12;
const MAX_STEPS = 2000;

/**
 * Marches from a value that goes towards a limit, in steps small enough that the miss cannot leave
 * the target and come back unseen, and closes in on the first end.
 */
function edgeTowards(
  missOf: (value: number) => MissOrLost,
  present: number,
  limit: number,
  missPerUnit: number,
  thinSide: Task['thinSide'],
): WindowEnd {
  const span = limit - present;
  const most = Math.abs(span) / RANGE_STEPS;
  const marginAt = (value: number) => marginOf(missOf(value));
  let step = Math.min(most, STEP_SHARE / Math.max(Math.abs(missPerUnit), Number.MIN_VALUE));
  let before: Sample | null = null;
  let here: Sample = { value: present, margin: marginAt(present) };
  for (let count = 0; count < MAX_STEPS && here.value !== limit; count++) {
    const isLast = step >= Math.abs(limit - here.value);
    const value = isLast ? limit : here.value + Math.sign(span) * step;
    const next = { value, margin: marginAt(value) };
    if (next.margin < 0) return closeIn(missOf, here.value, value, thinSide);
    const change = Math.abs(next.margin - here.margin);
    if (change > boldest(next.margin) && step > EDGE_TOLERANCE * Math.abs(span)) {
      step /= 4;
      continue;
    }
    const dip = before && dipBetween(marginAt, before, here, next);
    if (before && dip !== null) return closeIn(missOf, before.value, dip, thinSide);
    if (change < STEP_SHARE / 2) step = Math.min(most, 2 * step);
    [before, here] = [here, next];
  }
  return { value: here.value, endedBy: 'range' };
}

interface Sample {
  readonly value: number;
  readonly margin: number;
}

/** How much of what the target allows is left, 1 in the middle and below 0 where it does not go. */
function marginOf(miss: MissOrLost): number {
  return typeof miss === 'number' ? 1 - Math.abs(miss) : -1;
}

/** A value between three samples that go at which the ball does not; null where there is none. */
function dipBetween(
  marginAt: (value: number) => number,
  a: Sample,
  b: Sample,
  c: Sample,
): number | null {
  if (b.margin > a.margin || b.margin > c.margin) return null;
  return dipThroughZero(marginAt, a.value, a.margin, c.value, c.margin);
}

/** The nearer the edge, the smaller a step may be, lest it pass a brief excursion over it. */
function boldest(margin: number): number {
  return Math.min(MOST_STEP_SHARE, LEAST_STEP_SHARE + margin / 2);
}

const HALVINGS = 60;
/** The miss is at the target's edge this near it, as a share. */
const EDGE_MISS = 1e-9;

/** The last value that goes, between one that does and one that does not. */
function closeIn(
  missOf: (value: number) => MissOrLost,
  goesAt: number,
  failsAt: number,
  thinSide: Task['thinSide'],
): WindowEnd {
  let [good, bad] = [goesAt, failsAt];
  let badMiss = missOf(bad);
  for (let halving = 0; halving < HALVINGS; halving++) {
    const smooth = smoothEdge(missOf, good, bad, badMiss);
    const middle = smooth ?? (good + bad) / 2;
    if (middle === good || middle === bad) break;
    const miss = missOf(middle);
    if (goes(miss)) good = middle;
    else [bad, badMiss] = [middle, miss];
    if (smooth !== null) break;
  }
  return { value: good, endedBy: reasonOf(badMiss, thinSide) };
}

/** A value just within the edge, where the miss runs smoothly over it; null where it does not. */
function smoothEdge(
  missOf: (value: number) => MissOrLost,
  good: number,
  bad: number,
  badMiss: MissOrLost,
): number | null {
  const goodMiss = missOf(good);
  if (typeof badMiss !== 'number' || typeof goodMiss !== 'number') return null;
  const over = (value: number) => {
    const miss = missOf(value);
    return typeof miss === 'number' ? Math.abs(miss) - 1 + EDGE_MISS : 1;
  };
  const found = bracketedRoot(
    over,
    good,
    Math.abs(goodMiss) - 1 + EDGE_MISS,
    bad,
    Math.abs(badMiss) - 1 + EDGE_MISS,
    0,
    EDGE_MISS / 2,
  );
  return Math.abs(found.fx) <= EDGE_MISS / 2 ? found.x : null;
}

function reasonOf(miss: MissOrLost, thinSide: Task['thinSide']): EndedBy {
  if (typeof miss !== 'number') return miss;
  if (thinSide === 0) return miss > 0 ? 'right' : 'left';
  return miss * thinSide > 0 ? 'thin' : 'full';
}
