import { play } from '../../src/engine/direct/contact';
import { layoutOf } from '../../src/engine/direct/layout';
import { strokeOf } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { strike } from '../../src/engine/impacts/strike';
import { type Query, randomQuery } from '../harness/random-shots';
import { seededRandom } from '../harness/seeded-random';
import type { BenchLine } from './bench-line';
import { steppedPath } from './stepped-path';
import { ratePerSecond } from './stopwatch';

const RAD = Math.PI / 180;
const CALLS = 20_000;

function queries(elevationShare: number, slopeM_per_M: number): readonly Query[] {
  const random = seededRandom(1);
  return Array.from({ length: CALLS }, () => {
    const { shot, kit } = randomQuery(random, slopeM_per_M);
    return { kit, shot: { ...shot, elevationRad: shot.elevationRad * elevationShare } };
  });
}

const at = <T>(list: readonly T[], index: number): T => {
  const item = list[index % list.length];
  if (item === undefined) throw new RangeError('an empty list has no items');
  return item;
};

function solves(list: readonly Query[]): number {
  return ratePerSecond(CALLS, (call) => {
    const { shot, kit } = at(list, call);
    solveAim(shot, kit);
  });
}

function paths(list: readonly Query[]): number {
  return ratePerSecond(CALLS, (call) => {
    const { shot, kit } = at(list, call);
    play(strokeOf(shot, 0.2 * RAD), layoutOf(shot, kit.ballRadiusM), kit);
  });
}

function steppedPaths(list: readonly Query[]): number {
  const calls = 400;
  return ratePerSecond(calls, (call) => {
    const { shot, kit } = at(list, call);
    const { side, height, elevationRad, speedMps } = shot;
    const ball = strike({ aimRad: 0, side, height, elevationRad, speedMps }, kit);
    steppedPath(ball, shot.distanceM, kit);
  });
}

/** Solves and paths a second on one core, each beside the stepped yardstick of the same run. */
export function engineBench(): readonly BenchLine[] {
  const level = queries(0, 0);
  const nearlyLevel = queries(5 / 30, 0);
  const raised = queries(1, 0);
  const tilted = queries(5 / 30, 0.002);
  const yardstick = steppedPaths(level);
  const rates: readonly (readonly [string, number])[] = [
    ['aim solves, cue level', solves(level)],
    ['aim solves, cue raised 0-5°', solves(nearlyLevel)],
    ['aim solves, cue raised 0-30°', solves(raised)],
    ['aim solves, 0-5°, tilted bed', solves(tilted)],
    ['paths to contact, cue level', paths(level)],
    ['paths to contact, cue raised 0-30°', paths(raised)],
  ];
  return [
    { name: 'yardstick: paths in 0.1 ms steps, cue level', value: yardstick, unit: '/s' },
    ...rates.flatMap(([name, value]) => [
      { name, value, unit: '/s' },
      { name: `${name}, over the yardstick`, value: value / yardstick, unit: '×' },
    ]),
  ];
}
