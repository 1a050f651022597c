import { strike } from '../../src/engine/impacts/strike';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import type { Stroke } from '../../src/engine/stroke/stroke';
import { playTable } from '../../src/engine/table/play-table';
import { TABLE_SIZES, WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import type { PlacedBall } from '../../src/engine/table/table-play';
import { tableShape } from '../../src/engine/table/table-shape';
import type { BenchLine } from './bench-line';
import { steppedPath } from './stepped-path';
import { ratePerSecond } from './stopwatch';
import { triangle } from './triangle';

const CALLS = 1000;
const STEPPED = 400;
const { lengthM, widthM } = TABLE_SIZES['nine-foot'];
const SHAPE = tableShape(lengthM, widthM, WPA_POCKETS);
const STROKE: Stroke = { aimRad: 0.3, side: 0.1, height: 0.2, elevationRad: 0.05, speedMps: 3 };
const TILTED: Kit = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0.001, rightM_per_M: 0.001 } };

/** Fifteen touching balls in a triangle, and a cue ball. */
function rack(): readonly PlacedBall[] {
  return [{ xM: 0.05, yM: -0.8 }, ...triangle(5)];
}

const rate = (calls: number, balls: readonly PlacedBall[], stroke: Stroke, kit: Kit) =>
  ratePerSecond(calls, () => playTable(balls, stroke, kit, SHAPE));

/** Whole tables played to rest, beside the stepped yardstick of the same run. */
export function tableBench(): readonly BenchLine[] {
  const yardstick = ratePerSecond(STEPPED, () => {
    steppedPath(strike({ ...STROKE, aimRad: 0 }, DEFAULT_KIT), 1.5, DEFAULT_KIT);
  });
  // One hit between the balls and four cushions.
  const two = [
    { xM: 0, yM: -0.6 },
    { xM: 0.2, yM: 0 },
  ];
  const opening = { ...STROKE, aimRad: -0.03, speedMps: 9 };
  const rates: readonly (readonly [string, number])[] = [
    ['two balls, a hit and four cushions', rate(CALLS, two, STROKE, DEFAULT_KIT)],
    ['the same on a tilted bed', rate(CALLS, two, STROKE, TILTED)],
    ['an opening break at 9 m/s, 16 balls', rate(CALLS / 20, rack(), opening, DEFAULT_KIT)],
  ];
  return rates.flatMap(([name, value]) => [
    { name: `table: ${name}`, value: 1e6 / value, unit: 'µs' },
    { name: `table: ${name}, in stepped paths`, value: yardstick / value, unit: '×' },
  ]);
}
