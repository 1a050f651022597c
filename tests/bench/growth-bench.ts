import { strike } from '../../src/engine/impacts/strike';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { travel } from '../../src/engine/motion/journey';
import { objectBallAtRest } from '../../src/engine/motion/object-ball-at-rest';
import { placesOf } from '../../src/engine/plan/option-grid';
import { sweepOptions } from '../../src/engine/plan/sweep-options';
import type { Stroke } from '../../src/engine/stroke/stroke';
import { playTable } from '../../src/engine/table/play-table';
import { TABLE_SIZES, WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import { tableShape } from '../../src/engine/table/table-shape';
import type { BenchLine } from './bench-line';
import { ratePerSecond } from './stopwatch';
import { sweptPosition } from './swept-position';
import { triangle } from './triangle';

const { lengthM, widthM } = TABLE_SIZES['nine-foot'];
const SHAPE = tableShape(lengthM, widthM, WPA_POCKETS);
/** Calls of a path, and of a table. */
const PATHS = 5000;
const TABLES = 100;
const ROUNDS = 9;
const LEVEL: Stroke = { aimRad: 0, side: 0, height: 0, elevationRad: 0, speedMps: 1 };

/** So much work, and what it costs. */
interface Cost {
  readonly work: number;
  readonly costUs: number;
}

const cost = (work: number, calls: number, run: () => unknown): Cost => ({
  work,
  costUs: 1e6 / ratePerSecond(calls, run, ROUNDS),
});

/** A path of so many metres, without a hop. */
function perMetre(): readonly Cost[] {
  return [0.25, 1, 4].map((distanceM) => {
    const objectBall = objectBallAtRest(0, distanceM + 2 * DEFAULT_KIT.ballRadiusM);
    const ball = strike({ ...LEVEL, speedMps: 4 }, DEFAULT_KIT);
    return cost(distanceM, PATHS, () => travel(ball, 0, DEFAULT_KIT, [objectBall]));
  });
}

/** A run of so many hops and what comes after. */
function perHop(): readonly Cost[] {
  return [0.3, 0.6, 0.8].map((bedRestitution) => {
    const kit = { ...DEFAULT_KIT, bedRestitution };
    const ball = strike({ ...LEVEL, elevationRad: 0.2, speedMps: 4 }, kit);
    const run = () => travel(ball, 0, kit, []);
    return cost(run().phases.length, PATHS, run);
  });
}

/** A ball rolled square at the rails, ever harder: so many cushions. */
function perCushion(): readonly Cost[] {
  return [1, 3, 6].map((speedMps) => {
    const stroke = { ...LEVEL, height: 0.4, speedMps };
    const run = () => playTable([{ xM: 0.2, yM: 0 }], stroke, DEFAULT_KIT, SHAPE);
    const play = run();
    const met = play.ok ? play.events.filter(({ kind }) => kind === 'hits-cushion').length : 0;
    return cost(met, TABLES, run);
  });
}

/** An opening break of so many balls: each may come to meet each. */
function perBall(): readonly Cost[] {
  return [2, 3, 5].map((rows) => {
    const balls = [{ xM: 0.05, yM: -0.8 }, ...triangle(rows)];
    const stroke = { ...LEVEL, aimRad: -0.03, speedMps: 9 };
    return cost(balls.length, TABLES, () => playTable(balls, stroke, DEFAULT_KIT, SHAPE));
  });
}

/** So many strokes of a sweep. */
function perOption(): readonly Cost[] {
  const { asked, grid } = sweptPosition();
  const { question } = asked;
  const all = placesOf(grid);
  return [8, 4, 2].map((part) => {
    const to = Math.floor(all / part);
    const sweep = () => sweepOptions(question, grid, { from: 0, to });
    return cost(to, 1, sweep);
  });
}

/** The power of the work that the cost goes with, from the least to the most of it. */
function slopeOf(costs: readonly Cost[]): number {
  const [least, most] = [costs[0], costs.at(-1)];
  if (least === undefined || most === undefined) return Number.NaN;
  return Math.log(most.costUs / least.costUs) / Math.log(most.work / least.work);
}

/** What work costs as there is more of it, and the power of it that the cost goes with. */
export function growthBench(): readonly BenchLine[] {
  const kinds = [
    ['metres of a path', perMetre],
    ['phases of a hopping run', perHop],
    ['cushions', perCushion],
    ['balls of an opening break', perBall],
    ['strokes of a sweep', perOption],
  ] as const;
  // The first time is to warm up.
  const measured = kinds.map(([kind, measure]) => [kind, [measure(), measure()][1] ?? []] as const);
  return measured.flatMap(([kind, costs]) => [
    ...costs.map(({ work, costUs }) => ({ name: `${work} ${kind}`, value: costUs, unit: 'µs' })),
    { name: `${kind}: cost goes with this power of them`, value: slopeOf(costs), unit: '' },
  ]);
}
