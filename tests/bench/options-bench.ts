import { shotFrom } from '../../src/engine/goal/shot-from-position';
import { strike } from '../../src/engine/impacts/strike';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import type { Position } from '../../src/engine/lie/position';
import { placesOf } from '../../src/engine/plan/option-grid';
import { rankWays } from '../../src/engine/plan/rank-ways';
import { sweepOptions } from '../../src/engine/plan/sweep-options';
import { findPlays } from '../../src/engine/worth/find-plays';
import { waysQuestion } from '../harness/ways-positions';
import type { BenchLine } from './bench-line';
import { steppedPath } from './stepped-path';
import { ratePerSecond } from './stopwatch';
import { sweptPosition } from './swept-position';

const STEPPED = 400;
const ROUNDS = 3;
const SHOTS = 40;
const STROKE = { aimRad: 0, side: 0.3, height: 0, elevationRad: 0, speedMps: 2 };

/** Invented: a cue ball and five others, spread over the table. */
const SIX_BALLS: Position = [
  { name: 'cue', xM: -0.2, yM: -0.7 },
  { name: 1, xM: 0.3, yM: 0.75 },
  { name: 2, xM: -0.35, yM: 0.4 },
  { name: 3, xM: 0.1, yM: -0.1 },
  { name: 4, xM: -0.45, yM: -0.25 },
  { name: 5, xM: 0.42, yM: -0.85 },
];
/** As many as are told where nothing else is said. */
const RULE = { most: 12, keepsLow: false, order: 'worth', hasSafeties: true } as const;

/**
 * All ways to play six balls: processor time, for the search is long and other work runs beside it. The
 * code is warm: three of the balls have been searched before.
 */
function waysBench(): readonly BenchLine[] {
  for (const news of findPlays(waysQuestion(SIX_BALLS.slice(0, 3)), { ...RULE, most: 2 })) {
    if (news.done > news.of) throw new RangeError('more was done than there is to do');
  }
  const yardstick = cpuSecondsOf(() => {
    for (let path = 0; path < STEPPED; path++)
      steppedPath(strike(STROKE, DEFAULT_KIT), 1.5, DEFAULT_KIT);
  });
  const search = findPlays(waysQuestion(SIX_BALLS), RULE);
  let firstS = 0;
  let isOver = false;
  const allS = cpuSecondsOf((sinceS) => {
    while (!isOver) {
      const news = search.next();
      isOver = news.done === true;
      if (firstS === 0 && news.value.plays.length > 0) firstS = sinceS();
    }
  });
  const paths = (seconds: number) => (STEPPED * seconds) / yardstick;
  return [
    { name: 'all ways to play six balls, in stepped paths', value: paths(allS), unit: '×' },
    { name: 'the first of them, in stepped paths', value: paths(firstS), unit: '×' },
  ];
}

/** @param work is told how many seconds of processor time have gone since it began */
function cpuSecondsOf(work: (sinceS: () => number) => void): number {
  const start = process.cpuUsage();
  const sinceS = () => process.cpuUsage(start).user / 1e6;
  work(sinceS);
  return sinceS();
}

/** One position compared whole, beside the stepped yardstick of the same run. */
export function optionsBench(): readonly BenchLine[] {
  const { asked, grid } = sweptPosition();
  const { question, scene } = asked;
  const { shape, kit, goal } = scene;
  const yardstick = ratePerSecond(STEPPED, () => {
    steppedPath(strike(STROKE, kit), 1.5, kit);
  });
  const whole = { from: 0, to: placesOf(grid) };
  const options = sweepOptions(question, grid, whole);
  const sweeps = ratePerSecond(1, () => sweepOptions(question, grid, whole), ROUNDS);
  const ranks = ratePerSecond(1, () => Array.from(rankWays(asked, options)), ROUNDS);
  const shots = ratePerSecond(SHOTS, () => shotFrom(scene.position, goal, shape, kit));
  return [
    { name: `sweep of ${options.length} ways that go`, value: 1 / sweeps, unit: 's' },
    { name: 'that sweep, in stepped paths', value: yardstick / sweeps, unit: '×' },
    { name: 'its ways worked out in full, over the sweep', value: sweeps / ranks, unit: '×' },
    { name: 'shot from a position, in stepped paths', value: yardstick / shots, unit: '×' },
    ...waysBench(),
  ];
}
