import {
  goes,
  type HeldShot,
  type MissOrLost,
  missOfStroke,
  type StrokeInput,
  type StrokeInputs,
} from '../goal/held-shot';
import { allowedRad, type Target } from '../goal/target';
import { bracketedRoot } from '../numerics/bracketed-root';
import { dipThroughZero } from '../numerics/dip-through-zero';
import { STROKE_RANGES } from '../stroke/stroke';

/**
 * What ends a window: the ball goes wide on the thin or the full side (left or right where there is
 * no cut), the cue ball misses, the object ball stops short, the tip would slip, or the input's own
 * range is out.
 */
export type EndedBy =
  | 'thin'
  | 'full'
  | 'left'
  | 'right'
  | 'untouched'
  | 'short'
  | 'miscue'
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

export type RoomWindows = { readonly [I in StrokeInput]: RoomWindow };

/** A step off the present value for a slope, in each input's own unit. */
const NUDGES: StrokeInputs = {
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
 * @param inputs a stroke that goes; its aim is usually a solved one
 * @returns null where the stroke does not go to begin with
 */
export function roomWindows(held: HeldShot, inputs: StrokeInputs): RoomWindows | null {
  if (!goes(missOfStroke(held, inputs))) return null;
  const windowOf = (input: StrokeInput) => windowAround(held, inputs, input);
  return {
    aimRad: windowOf('aimRad'),
    speedMps: windowOf('speedMps'),
    side: windowOf('side'),
    height: windowOf('height'),
    elevationRad: windowOf('elevationRad'),
  };
}

function windowAround(held: HeldShot, inputs: StrokeInputs, input: StrokeInput): RoomWindow {
  const missAt = (value: number) => missOfStroke(held, { ...inputs, [input]: value });
  const limit = STROKE_RANGES[input];
  const directionPerUnit = directionSlope(held, inputs, input);
  const missPerUnit = (directionPerUnit ?? 0) / allowedRad(held.target, held.kit.ballRadiusM);
  const edge = (to: number) =>
    edgeTowards(missAt, inputs[input], to, missPerUnit, held.shot.cutRad);
  return { low: edge(limit.min), high: edge(limit.max), directionPerUnit };
}

/** A target that counts the miss in radians. */
const IN_RADIANS: Target = { kind: 'angle', halfAngleRad: 1 };

/** By a nudge one way alone where one the other way loses the object ball. */
function directionSlope(held: HeldShot, inputs: StrokeInputs, input: StrokeInput): number | null {
  const present = inputs[input];
  const directionAt = (value: number) =>
    missOfStroke({ ...held, target: IN_RADIANS }, { ...inputs, [input]: value });
  const { min, max } = STROKE_RANGES[input];
  const nudged = [Math.max(min, present - NUDGES[input]), Math.min(max, present + NUDGES[input])];
  const [low = present, high = present] = nudged.map((value) =>
    typeof directionAt(value) === 'number' ? value : present,
  );
  const [atLow, atHigh] = [directionAt(low), directionAt(high)];
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
  missAt: (value: number) => MissOrLost,
  present: number,
  limit: number,
  missPerUnit: number,
  cutRad: number,
): WindowEnd {
  const span = limit - present;
  const most = Math.abs(span) / RANGE_STEPS;
  const marginAt = (value: number) => marginOf(missAt(value));
  let step = Math.min(most, STEP_SHARE / Math.max(Math.abs(missPerUnit), Number.MIN_VALUE));
  let before: Sample | null = null;
  let here: Sample = { value: present, margin: marginAt(present) };
  for (let count = 0; count < MAX_STEPS && here.value !== limit; count++) {
    const isLast = step >= Math.abs(limit - here.value);
    const value = isLast ? limit : here.value + Math.sign(span) * step;
    const next = { value, margin: marginAt(value) };
    if (next.margin < 0) return closeIn(missAt, here.value, value, cutRad);
    const change = Math.abs(next.margin - here.margin);
    if (change > boldest(next.margin) && step > EDGE_TOLERANCE * Math.abs(span)) {
      step /= 4;
      continue;
    }
    const dip = before && dipBetween(marginAt, before, here, next);
    if (before && dip !== null) return closeIn(missAt, before.value, dip, cutRad);
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
  missAt: (value: number) => MissOrLost,
  goesAt: number,
  failsAt: number,
  cutRad: number,
): WindowEnd {
  let [good, bad] = [goesAt, failsAt];
  let badMiss = missAt(bad);
  for (let halving = 0; halving < HALVINGS; halving++) {
    const smooth = smoothEdge(missAt, good, bad, badMiss);
    const middle = smooth ?? (good + bad) / 2;
    if (middle === good || middle === bad) break;
    const miss = missAt(middle);
    if (goes(miss)) good = middle;
    else [bad, badMiss] = [middle, miss];
    if (smooth !== null) break;
  }
  return { value: good, endedBy: reasonOf(badMiss, cutRad) };
}

/** A value just within the edge, where the miss runs smoothly over it; null where it does not. */
function smoothEdge(
  missAt: (value: number) => MissOrLost,
  good: number,
  bad: number,
  badMiss: MissOrLost,
): number | null {
  const goodMiss = missAt(good);
  if (typeof badMiss !== 'number' || typeof goodMiss !== 'number') return null;
  const over = (value: number) => {
    const miss = missAt(value);
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

function reasonOf(miss: MissOrLost, cutRad: number): EndedBy {
  if (typeof miss !== 'number') return miss;
  if (cutRad === 0) return miss > 0 ? 'right' : 'left';
  return miss > 0 === cutRad > 0 ? 'thin' : 'full';
}
