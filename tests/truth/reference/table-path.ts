import { bodiesImpact } from './ball-impact';
import type { Body } from './body';
import { cushionBounce } from './cushion-bounce';
import { advanced, bodyNow, onward, type Runner, startAgain } from './runner';
import { closingOf, type Gap, gapLike, gapsOf, intoCushion, type Table } from './table-gaps';
import type { Vec3 } from './vec3';

/** What two things meet: a ball and a ball, a ball and a cushion, or a ball and a hole. */
export interface Happening extends Pick<Gap, 'kind' | 'ball' | 'other'> {
  /** How fast the two surfaces close in, m/s; 0 for a hole. */
  readonly closingMps: number;
  readonly timeS: number;
  /** Where all the balls are then. */
  readonly places: readonly Vec3[];
}

/** What became of the balls, as far as they were followed. */
export interface Followed {
  readonly happenings: readonly Happening[];
  /** Where they lie once all of them rest; null where they were not followed so far. */
  readonly rests: readonly Vec3[] | null;
}

/** Steps this long see any graze deeper than 0.1 µm at 5 m/s. */
const FLOOR_S = 4e-5;
const LONGEST_S = 5e-3;
const MOST_STEPS = 60_000;
const BISECTIONS = 44;
/** Impulses of the nose: with five times as many, balls come to lie 0.001 mm elsewhere on average. */
const INCREMENTS = 20_000;

/**
 * The first `most` things that happen to balls on a table, by the ODE solver from step to step, the
 * steps small where a gap is small, and halved where one has closed. A ball in a hole ends it.
 */
export function followTable(balls: readonly Body[], table: Table, most: number): Followed {
  const { kit } = table;
  let runners = balls.map((body) => startAgain(body, kit));
  let timeS = 0;
  const happenings: Happening[] = [];
  for (let steps = 0; steps < MOST_STEPS && happenings.length < most; steps++) {
    if (runners.every(({ stretch }) => stretch === null)) {
      return { happenings, rests: runners.map((runner) => bodyNow(runner).at) };
    }
    const stepS = stepOf(runners, table);
    const next = runners.map((runner) => advanced(runner, stepS));
    const closed = gapsOf(next, table).filter((gap) => hasClosed(gap, runners, table));
    if (closed.length === 0) {
      timeS += stepS;
      runners = next.map((runner) => (runner.leftS > 0 ? runner : onward(runner, kit)));
      continue;
    }
    const { atS, gap } = firstClosed(closed, runners, stepS, table);
    const touching = runners.map((runner) => advanced(runner, atS));
    timeS += atS;
    const bodies = touching.map(bodyNow);
    const places = bodies.map(({ at }) => at);
    const { kind, ball, other } = gap;
    const closingMps = closingOf(bodies, gap, table);
    happenings.push({ kind, ball, other, closingMps, timeS, places });
    if (kind === 'hole') break;
    runners = met(touching, bodies, gap, table);
  }
  return { happenings, rests: null };
}

function stepOf(runners: readonly Runner[], table: Table): number {
  const safe = gapsOf(runners, table).map(({ openS }) => Math.max(FLOOR_S, openS));
  return Math.min(LONGEST_S, ...safe, ...runners.map(({ leftS }) => leftS));
}

/** Overlapping, and more so than before: a touch just answered may still overlap by rounding. */
function hasClosed(gap: Gap, before: readonly Runner[], table: Table): boolean {
  return gap.gapM < 0 && gap.gapM < gapLike(gap, before, table);
}

function firstClosed(
  closed: readonly Gap[],
  runners: readonly Runner[],
  stepS: number,
  table: Table,
) {
  const times = closed.map((gap) => ({ gap, atS: closingTime(gap, runners, stepS, table) }));
  return times.reduce((first, one) => (one.atS < first.atS ? one : first));
}

function closingTime(gap: Gap, runners: readonly Runner[], stepS: number, table: Table): number {
  let [openS, shutS] = [0, stepS];
  for (let round = 0; round < BISECTIONS; round++) {
    const midS = (openS + shutS) / 2;
    const mid = runners.map((runner, ball) =>
      ball === gap.ball || ball === gap.other ? advanced(runner, midS) : runner,
    );
    if (gapLike(gap, mid, table) < 0) shutS = midS;
    else openS = midS;
  }
  return openS;
}

/** What became of the balls that met, or of the one that met a cushion. */
function met(
  runners: readonly Runner[],
  bodies: readonly Body[],
  gap: Gap,
  table: Table,
): Runner[] {
  const { kit, outline } = table;
  const [one, two] = [bodies[gap.ball], bodies[gap.other ?? -1]];
  if (one === undefined || !(closingOf(bodies, gap, table) > 0)) return [...runners];
  const after = (): readonly [Body, Body | null] => {
    if (two === undefined) {
      const into = intoCushion(one, outline);
      return [cushionBounce(one, into, kit.cushion, kit, INCREMENTS), null];
    }
    // Only the cue ball's mass is another.
    const pairKit = gap.ball === 0 ? kit : { ...kit, cueBallMassRatio: 1 };
    const { cueBall, objectBall } = bodiesImpact(one, two, pairKit);
    return [cueBall, objectBall];
  };
  const [first, second] = after();
  return runners.map((runner, ball) => {
    if (ball === gap.ball) return startAgain(first, kit);
    return ball === gap.other && second !== null ? startAgain(second, kit) : runner;
  });
}
