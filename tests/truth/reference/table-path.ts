import type { Cushion, Kit } from '../../../src/engine/kit/kit';
import { bodiesImpact } from './ball-impact';
import { bedBounce } from './bed-bounce';
import type { Body } from './body';
import { gripped, landed, type Motion, nextMotion, nextStretch, spunOut } from './cue-ball-path';
import { cushionBounce } from './cushion-bounce';
import { type Coordinates, toBody, toCoordinates } from './forces';
import { FINE } from './play-shot';
import type { Stretch } from './stretch';
import { holeGap, nearestEdge, type Outline } from './table-outline';
import { dot, length, minus, type Vec3 } from './vec3';

/** What two things meet: a ball and a ball, a ball and a cushion, or a ball and a hole. */
export interface Happening {
  readonly kind: 'ball' | 'cushion' | 'hole';
  readonly ball: number;
  readonly timeS: number;
  /** Where all the balls are then. */
  readonly places: readonly Vec3[];
}

/** A table to be played on. */
export interface Table {
  readonly outline: Outline;
  readonly kit: Kit;
  readonly cushion: Cushion;
}

/** Steps this long see any graze deeper than 0.1 µm at 5 m/s. */
const FLOOR_S = 4e-5;
const LONGEST_S = 5e-3;
/** More than a ball gains in the longest step, m/s. */
const MARGIN_MPS = 0.1;
const MOST_STEPS = 60_000;
const BISECTIONS = 44;
/** Impulses of the nose: with five times as many, balls come to lie 0.001 mm elsewhere on average. */
const INCREMENTS = 20_000;

/** A ball on its way through a stretch of one law of force. */
interface Runner {
  readonly ball: Coordinates;
  readonly motion: Motion;
  readonly stretch: Stretch | null;
  readonly leftS: number;
}

/** A way in which two things may meet. */
interface Gap {
  readonly kind: Happening['kind'];
  readonly ball: number;
  readonly gapM: number;
  readonly speedMps: number;
}

/**
 * The first `most` things that happen to balls on a table, by the ODE solver from step to step, the
 * steps small where a gap is small, and halved where one has closed.
 */
export function followTable(balls: readonly Body[], table: Table, most: number): Happening[] {
  const { kit } = table;
  let runners = balls.map((body) => startAgain(body, kit));
  let timeS = 0;
  const happenings: Happening[] = [];
  for (let steps = 0; steps < MOST_STEPS && happenings.length < most; steps++) {
    if (runners.every(({ stretch }) => stretch === null)) break;
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
    const places = touching.map(({ ball }) => toBody(ball).at);
    happenings.push({ kind: gap.kind, ball: gap.ball, timeS, places });
    if (gap.kind === 'hole') break;
    runners = met(touching, gap, table);
  }
  return happenings;
}

function startAgain(body: Body, kit: Kit): Runner {
  const ball = toCoordinates(bedBounce(body, kit, FINE.restSpeedMps));
  return begun(ball, 'flying', kit);
}

function begun(ball: Coordinates, last: Motion, kit: Kit): Runner {
  const motion = nextMotion(ball, last, kit);
  const start = motion === 'rolling' ? gripped(ball, kit) : ball;
  if (motion === 'resting')
    return { ball: start, motion, stretch: null, leftS: Number.POSITIVE_INFINITY };
  const stretch = nextStretch(start, motion, kit);
  return { ball: start, motion, stretch, leftS: stretch.durationS };
}

function onward({ ball, motion }: Runner, kit: Kit): Runner {
  const now = motion === 'flying' ? landed(ball, kit, FINE) : spunOut(ball);
  return begun(now, motion, kit);
}

function advanced(runner: Runner, byS: number): Runner {
  const { stretch, leftS, ball } = runner;
  if (stretch === null || byS === 0) return runner;
  const { end } = FINE.run({ ...stretch, start: ball, durationS: byS }, null);
  // The step that was to end the stretch has ended it, whatever the last bit says.
  return { ...runner, ball: end, leftS: byS >= leftS ? 0 : leftS - byS };
}

function stepOf(runners: readonly Runner[], table: Table): number {
  const safe = gapsOf(runners, table).map(({ gapM, speedMps }) =>
    Math.max(FLOOR_S, gapM / (speedMps + MARGIN_MPS)),
  );
  return Math.min(LONGEST_S, ...safe, ...runners.map(({ leftS }) => leftS));
}

/** Every gap of a ball that moves. */
function gapsOf(runners: readonly Runner[], table: Table): Gap[] {
  const bodies = runners.map(({ ball }) => toBody(ball));
  const alone = bodies.flatMap(({ at, velocity }, ball): Gap[] => {
    if (runners[ball]?.stretch === null) return [];
    const speedMps = length(velocity);
    return [
      { kind: 'cushion', ball, gapM: cushionGap(at, table), speedMps },
      { kind: 'hole', ball, gapM: holeGap(table.outline, [at[0], at[1]]), speedMps },
    ];
  });
  const [one, other] = bodies;
  if (one === undefined || other === undefined) return alone;
  const gapM = length(minus(one.at, other.at)) - 2 * table.kit.ballRadiusM;
  const speedMps = length(one.velocity) + length(other.velocity);
  return [{ kind: 'ball', ball: 0, gapM, speedMps }, ...alone];
}

function cushionGap(at: Vec3, { outline, cushion, kit }: Table): number {
  const { awayM } = nearestEdge(outline, [at[0], at[1]]);
  const riseM = (cushion.noseHeight - 1) * kit.ballRadiusM - at[2];
  return Math.hypot(awayM, riseM) - kit.ballRadiusM;
}

/** Overlapping, and more so than before: a touch just answered may still overlap by rounding. */
function hasClosed(gap: Gap, before: readonly Runner[], table: Table): boolean {
  return gap.gapM < 0 && gap.gapM < gapLike(gap, before, table);
}

function gapLike(like: Gap, runners: readonly Runner[], table: Table): number {
  const found = gapsOf(runners, table).find(
    ({ kind, ball }) => kind === like.kind && ball === like.ball,
  );
  return found?.gapM ?? Number.POSITIVE_INFINITY;
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
    const mid = runners.map((runner) => advanced(runner, midS));
    if (gapLike(gap, mid, table) < 0) shutS = midS;
    else openS = midS;
  }
  return openS;
}

/** What became of the balls that met, or of the one that met a cushion. */
function met(runners: readonly Runner[], gap: Gap, { outline, cushion, kit }: Table): Runner[] {
  const bodies = runners.map(({ ball }) => settled(toBody(ball)));
  const [one, other] = bodies;
  if (gap.kind === 'ball' && one !== undefined && other !== undefined) {
    const { cueBall, objectBall } = bodiesImpact(one, other, kit);
    return [startAgain(cueBall, kit), startAgain(objectBall, kit)];
  }
  return runners.map((runner, ball) => {
    const body = bodies[ball];
    if (ball !== gap.ball || body === undefined) return runner;
    const { towards } = nearestEdge(outline, [body.at[0], body.at[1]]);
    const into: Vec3 = [...towards, 0];
    if (!(dot(body.velocity, into) > 0)) return runner;
    return startAgain(cushionBounce(body, into, cushion, kit, INCREMENTS), kit);
  });
}

/** A ball lower than this, m, is on the bed: it has just been thrown up, and is there by rounding. */
const ROUNDING_M = 1e-12;

function settled({ at: [x, y, z], ...motion }: Body): Body {
  return { ...motion, at: [x, y, z < ROUNDING_M ? 0 : z] };
}
