import { shotFrom } from '../../src/engine/goal/shot-from-position';
import { strike } from '../../src/engine/impacts/strike';
import { gridFrom } from '../../src/engine/plan/grid-from';
import { placesOf } from '../../src/engine/plan/option-grid';
import { rankWays } from '../../src/engine/plan/rank-ways';
import { sweepOptions } from '../../src/engine/plan/sweep-options';
import { inventedPositions } from '../harness/invented-positions';
import type { BenchLine } from './bench-line';
import { steppedPath } from './stepped-path';
import { ratePerSecond } from './stopwatch';

const STEPPED = 400;
const ROUNDS = 3;
const SHOTS = 40;

/** One position compared whole, beside the stepped yardstick of the same run. */
export function optionsBench(): readonly BenchLine[] {
  const position = inventedPositions().at(-1);
  if (position === undefined) throw new RangeError('there are no positions');
  const { asked, shot } = position;
  const { question, scene } = asked;
  const { shape, kit, goal } = scene;
  const stroke = { aimRad: 0, side: 0.3, height: 0, elevationRad: 0, speedMps: 2 };
  const yardstick = ratePerSecond(STEPPED, () => {
    steppedPath(strike(stroke, kit), 1.5, kit);
  });
  const grid = gridFrom(scene.position, shot.headingRad, shape, kit);
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
  ];
}
