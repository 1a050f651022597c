import { cholesky, choleskyInverse, choleskySolve } from '../numerics/cholesky';
import { latticePoint } from '../numerics/lattice';
import { normalQuantile } from '../numerics/normal';
import { likelihoodOf, likelihoodOfStop, type SpeedWindow, type Stopped } from './known-player';
import { playerOf, UNKNOWNS, type Unknowns } from './player-of';
import type { PlainLine, Result } from './shot-line';
import { type QuestionChances, shareAt } from './the-question';

/** A shot that was played. */
export interface LoggedShot {
  readonly line: PlainLine;
  /** Where it was aimed, from the solved aim, rad, right +. */
  readonly aimOffRad: number;
  readonly result: Result;
  /** Where the cue ball stopped, where that was asked for and the ball went. */
  readonly rest?: SeenRest;
}

/** Where a cue ball was to stop, and did. */
export interface SeenRest extends SpeedWindow {
  readonly stopped: Stopped;
}

/** How many of ten a player says to make of the question's shot. */
export interface Made {
  readonly question: QuestionChances;
  readonly of10: number;
}

/** All that is known of a player: shots, the oldest first, and the answer to the question. */
export interface Evidence {
  readonly made: Made | null;
  readonly shots: readonly LoggedShot[];
}

/** One entry in thirty is careless, whatever it says (our estimate). */
const FALSE_SHARE = 1 / 30;
/** The results there are on one shot. */
const KINDS = 5;
/** A shot counts half once so many have been played since (our judgement). */
const HALF_LIFE_SHOTS = 300;

/** The posterior of a player, as a weighted set of players. */
export interface PlayerKnowledge {
  readonly points: readonly { readonly unknowns: Unknowns; readonly weight: number }[];
}

/** Minus the logarithm of the posterior, but for a constant. */
function surprise({ made, shots }: Evidence, unknowns: Unknowns): number {
  let sum = unknowns.reduce((total, value) => total + (value * value) / 2, 0);
  const player = playerOf(unknowns);
  shots.forEach(({ line, aimOffRad, result, rest }, index) => {
    const stops = rest ? likelihoodOfStop(player, rest, rest.stopped) : 1;
    const likely = stops * likelihoodOf(player, line, result, aimOffRad);
    const weight = 2 ** ((index + 1 - shots.length) / HALF_LIFE_SHOTS);
    sum -= weight * Math.log((1 - FALSE_SHARE) * likely + FALSE_SHARE / KINDS);
  });
  if (made !== null) sum += surpriseSaid(made, unknowns);
  return sum;
}

/** A binomial of ten: by the engine's own chance at that level, as far as biases leave of it. */
function surpriseSaid({ question, of10 }: Made, unknowns: Unknowns): number {
  const [level = 0] = unknowns;
  const biased = likelihoodOf(playerOf(unknowns), question.line, 'went');
  const unbiased = likelihoodOf(playerOf([level]), question.line, 'went');
  const share = shareAt(question, level) * (biased / unbiased);
  const likely = Math.min(1 - LEAST_SHARE, Math.max(LEAST_SHARE, share));
  return -(of10 * Math.log(likely) + (10 - of10) * Math.log(1 - likely));
}

/** Nobody makes or misses a shot always. */
const LEAST_SHARE = 0.005;

/** Points of the set: a power of two, for an even lattice. */
const POINTS = 1024;
/** The set reaches this much wider than the posterior's own shape at its top. */
const WIDER = 1.3;

/** What is known of a player. */
export function learn(evidence: Evidence): PlayerKnowledge {
  const top = topOf(evidence);
  const factor = cholesky(choleskyInverse(top.factor));
  const least = surprise(evidence, top.unknowns);
  const points = Array.from({ length: POINTS }, (_, point) => {
    const normal = Array.from({ length: UNKNOWNS }, (_unused, dimension) =>
      normalQuantile(latticePoint(point, dimension, 0)),
    );
    const unknowns = top.unknowns.map((value, row) => {
      const tied = (factor?.[row] ?? []).reduce(
        (sum, share, column) => sum + share * (normal[column] ?? 0),
        0,
      );
      return value + WIDER * tied;
    });
    const drawn = normal.reduce((sum, value) => sum + (value * value) / 2, 0);
    return { unknowns, weight: Math.exp(drawn + least - surprise(evidence, unknowns)) };
  });
  const total = points.reduce((sum, { weight }) => sum + weight, 0);
  return { points: points.map(({ unknowns, weight }) => ({ unknowns, weight: weight / total })) };
}

const ROUNDS = 40;
const STEP = 0.02;
/** A step that brings no more than this is the last. */
const SETTLED = 1e-7;

/** The most likely player, and the curvature there: Newton's steps, shortened until they help. */
function topOf(evidence: Evidence) {
  let unknowns: number[] = new Array<number>(UNKNOWNS).fill(0);
  let value = surprise(evidence, unknowns);
  for (let round = 0; ; round++) {
    const { slope, factor } = shapeAt(evidence, unknowns, value);
    const step = choleskySolve(factor, slope);
    let share = 1;
    let next = unknowns;
    let better = value;
    for (; share > 1e-3; share /= 2) {
      next = unknowns.map((at, index) => at - share * (step[index] ?? 0));
      better = surprise(evidence, next);
      if (better < value) break;
    }
    if (!(value - better > SETTLED) || round === ROUNDS) return { unknowns, factor };
    [unknowns, value] = [next, better];
  }
}

/** Slope and curvature by central differences; where that is no valley, the prior's curvature is added. */
function shapeAt(evidence: Evidence, unknowns: readonly number[], value: number) {
  const at = (moves: readonly (readonly [number, number])[]) => {
    const moved = [...unknowns];
    for (const [index, by] of moves) moved[index] = (moved[index] ?? 0) + by;
    return surprise(evidence, moved);
  };
  const up = unknowns.map((_, index) => at([[index, STEP]]));
  const down = unknowns.map((_, index) => at([[index, -STEP]]));
  const slope = up.map((high, index) => (high - (down[index] ?? 0)) / (2 * STEP));
  const curvature = unknowns.map((_, i) =>
    unknowns.map((_unused, j) => {
      if (i === j) return ((up[i] ?? 0) - 2 * value + (down[i] ?? 0)) / (STEP * STEP);
      if (j > i) return 0;
      const both = at([
        [i, STEP],
        [j, STEP],
      ]);
      const neither = at([
        [i, -STEP],
        [j, -STEP],
      ]);
      const alone = (up[i] ?? 0) + (up[j] ?? 0) + (down[i] ?? 0) + (down[j] ?? 0);
      return (both + neither + 2 * value - alone) / (2 * STEP * STEP);
    }),
  );
  for (let added = 0; ; added = 2 * added + 0.5) {
    const raised = curvature.map((row, i) =>
      row.map((entry, j) => (i === j ? entry + added : entry)),
    );
    const factor = cholesky(raised);
    if (factor !== null) return { slope, factor };
  }
}

/** A figure of a player: its middle, and the ends of its central nine tenths. */
export interface KnownFigure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What is known of something that hangs on the player. */
export function figureOf(
  { points }: PlayerKnowledge,
  of: (unknowns: Unknowns) => number,
): KnownFigure {
  const values = points
    .map(({ unknowns, weight }) => ({ value: of(unknowns), weight }))
    .sort((a, b) => a.value - b.value);
  const at = (share: number) => {
    let sum = 0;
    for (const { value, weight } of values) {
      sum += weight;
      if (sum >= share) return value;
    }
    return values.at(-1)?.value ?? Number.NaN;
  };
  return { value: at(0.5), low: at(0.05), high: at(0.95) };
}
