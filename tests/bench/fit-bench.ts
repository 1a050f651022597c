import { fitKit } from '../../src/engine/fit/fit-kit';
import { strike } from '../../src/engine/impacts/strike';
import { calibrate, MIDDLE, reportOn } from '../harness/trial-player';
import type { BenchLine } from './bench-line';
import { steppedPath } from './stepped-path';
import { ratePerSecond } from './stopwatch';

const CALLS = 4;
const STEPPED = 400;

/** A calibration of sixteen shots, beside the stepped yardstick of the same run. */
export function fitBench(): readonly BenchLine[] {
  const { shots } = calibrate(1, 14);
  const stroke = { aimRad: 0, side: 0.3, height: 0, elevationRad: 0, speedMps: 2 };
  const yardstick = ratePerSecond(STEPPED, () => {
    steppedPath(strike(stroke, MIDDLE.kit), 1.5, MIDDLE.kit);
  });
  const fits = ratePerSecond(CALLS, () => fitKit(shots));
  const reports = ratePerSecond(CALLS, () => reportOn(shots));
  return [
    { name: 'calibration of 16 shots: estimate', value: fits, unit: '/s' },
    { name: 'one estimate, in stepped paths', value: yardstick / fits, unit: '×' },
    { name: 'one estimate and the shot to play next', value: yardstick / reports, unit: '×' },
  ];
}
