import type { MissOrLost } from '../goal/task';
import { normalBelow } from '../numerics/normal';

/** The miss with the cue's direction off by so many standard deviations. */
export type MissAlong = (sds: number) => MissOrLost;

/** Edges further out than this many standard deviations are as good as never met. */
const FARTHEST_SDS = 5;
const MAX_ROUNDS = 6;
/** An edge played this near, as a share of what the target allows, needs but one more step. */
const NEAR = 0.15;

interface Point {
  readonly sds: number;
  readonly miss: number;
}

/**
 * The chance that the ball goes over the scatter of the cue's direction alone: the two edges of the
 * window are found by secant steps, and the normal law does the rest.
 *
 * @param missPerSd a first slope; NaN where none is known
 */
export function shareAlong(missAlong: MissAlong, missPerSd: number): number {
  const base = firstTouching(missAlong);
  if (base === null) return 0;
  const slope = Number.isFinite(missPerSd) ? missPerSd : slopeAt(missAlong, base);
  if (!(Math.abs(slope) > 0)) return Math.abs(base.miss) <= 1 ? 1 : 0;
  const edges = [-1, 1].map((miss) => edgeAt(missAlong, base, slope, miss));
  return Math.abs(normalBelow(edges[1] ?? 0) - normalBelow(edges[0] ?? 0));
}

/**
 * Turns of the cue that are tried where the meant one loses the object ball, in standard deviations:
 * at a thin cut it may be reached, or pushed far enough, only a little to one side.
 */
const TURNS = [0, 0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2, 2.5, -2.5, 3, -3, 4, -4, 5, -5];

/** The meant direction or, where that loses the object ball, one near it that does not. */
function firstTouching(missAlong: MissAlong): Point | null {
  for (const sds of TURNS) {
    const miss = missAlong(sds);
    if (typeof miss === 'number') return { sds, miss };
    if (miss === 'miscue') return null;
  }
  return null;
}

const NUDGE_SDS = 0.02;

function slopeAt(missAlong: MissAlong, { sds, miss }: Point): number {
  const beside = missAlong(sds + NUDGE_SDS);
  return typeof beside === 'number' ? (beside - miss) / NUDGE_SDS : 0;
}

/** Where the miss is as wanted or, if nearer, where the object ball is lost; in standard deviations. */
function edgeAt(missAlong: MissAlong, base: Point, firstSlope: number, wanted: number): number {
  let [from, slope] = [base, firstSlope];
  let lostAt = Number.NaN;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const aimed = within(from.sds + (wanted - from.miss) / slope);
    const guess = isBeyond(aimed, lostAt, from.sds) ? (from.sds + lostAt) / 2 : aimed;
    if (guess === from.sds) return guess;
    const miss = missAlong(guess);
    if (typeof miss !== 'number') {
      lostAt = guess;
      continue;
    }
    const secant = (miss - from.miss) / (guess - from.sds);
    // A direction that turns back on itself is another branch: the first slope is the better guide.
    if (!(secant * firstSlope > 0)) return guess;
    [from, slope] = [{ sds: guess, miss }, secant];
    if (Math.abs(miss - wanted) < NEAR) break;
  }
  const edge = within(from.sds + (wanted - from.miss) / slope);
  return isBeyond(edge, lostAt, from.sds) ? (from.sds + lostAt) / 2 : edge;
}

/** Whether, going from a place, one comes to `lostAt` before `to`. */
function isBeyond(to: number, lostAt: number, from: number): boolean {
  return (to - from) * (lostAt - from) > 0 && Math.abs(to - from) >= Math.abs(lostAt - from);
}

function within(sds: number): number {
  return Math.max(-FARTHEST_SDS, Math.min(FARTHEST_SDS, sds));
}
