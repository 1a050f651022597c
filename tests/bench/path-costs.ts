import { strike } from '../../src/engine/impacts/strike';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { travel } from '../../src/engine/motion/journey';
import { objectBallAtRest } from '../../src/engine/motion/object-ball-at-rest';
import type { BenchLine } from './bench-line';
import { ratePerSecond } from './stopwatch';

const RAD = Math.PI / 180;
const CALLS = 40_000;

interface Path {
  readonly distanceM: number;
  readonly elevationDeg: number;
  readonly kit: Kit;
}

/** Microseconds for a path at 4 m/s up to the object ball, and how many phases it has. */
function cost({ distanceM, elevationDeg, kit }: Path) {
  const stroke = { aimRad: 0, side: 0, height: 0, speedMps: 4, elevationRad: elevationDeg * RAD };
  const objectBall = objectBallAtRest(0, distanceM + 2 * kit.ballRadiusM);
  const run = () => travel(strike(stroke, kit), 0, kit, [objectBall]);
  return { phases: run().phases.length, costUs: 1e6 / ratePerSecond(CALLS, run) };
}

/** What a path costs the engine as it grows longer, and as it breaks into more hops. */
export function pathCosts(): readonly BenchLine[] {
  const level = [0.25, 1, 4].map((distanceM) => ({
    name: `engine path of ${distanceM} m, no hop`,
    ...cost({ distanceM, elevationDeg: 0, kit: DEFAULT_KIT }),
  }));
  const hopping = [0, 0.3, 0.6, 0.8].map((bedRestitution) => ({
    name: `engine path of 4 m, cue at 10°, e_bed ${bedRestitution}`,
    ...cost({ distanceM: 4, elevationDeg: 10, kit: { ...DEFAULT_KIT, bedRestitution } }),
  }));
  return [...level, ...hopping].map(({ name, phases, costUs }) => ({
    name: `${name}, ${phases} phases`,
    value: costUs,
    unit: 'µs',
  }));
}
