import type { Range } from '../../src/engine/numerics/range';
import { between, type Random } from './seeded-random';

/** Draws a value for a quantity of this range: mostly within it, and where `junkShare` says, not. */
export type HostileValues = (range: Range) => number;

/** Numbers that no quantity should be asked to take, and some that look harmless. */
const JUNK = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  Number.MAX_VALUE,
  -Number.MAX_VALUE,
  Number.MIN_VALUE,
  -Number.MIN_VALUE,
  2 ** -1022,
  -0,
  0,
  1e-300,
  1e300,
  -1,
  1e9,
];

/** @param junkShare how often the value is junk or one double beyond an end of its range */
export function hostileValues(random: Random, junkShare: number): HostileValues {
  return (range) => (random() < junkShare ? outside(random, range) : within(random, range));
}

function outside(random: Random, { min, max }: Range): number {
  const beyond = [nextUp(max), -nextUp(-min)];
  const pool = random() < 0.4 ? beyond : JUNK;
  return pool[Math.floor(random() * pool.length)] ?? Number.NaN;
}

function within(random: Random, range: Range): number {
  const { min, max } = range;
  const kind = random();
  if (kind < 0.1) return min;
  if (kind < 0.2) return max;
  if (kind < 0.24) return -nextUp(-Math.min(max, Number.MAX_VALUE));
  if (kind < 0.28) return nextUp(min);
  if (kind < 0.34) return nearZero(random, range);
  const top = Math.min(max, 1e6);
  if (kind < 0.6 && min > 0) return Math.min(top, min * (top / min) ** random());
  return between(random, min, Math.min(top, max));
}

/** Zero of either sign or a denormal where the range holds it. */
function nearZero(random: Random, { min, max }: Range): number {
  const small = [0, -0, Number.MIN_VALUE, -Number.MIN_VALUE, 1e-200, 1e-17, -1e-17];
  const value = small[Math.floor(random() * small.length)] ?? 0;
  return value >= min && value <= max ? value : min;
}

const BITS = new DataView(new ArrayBuffer(8));

/** The next double above a finite one; Infinity stays. */
export function nextUp(value: number): number {
  if (!Number.isFinite(value)) return value;
  if (value === 0) return Number.MIN_VALUE;
  BITS.setFloat64(0, value);
  BITS.setBigInt64(0, BITS.getBigInt64(0) + (value > 0 ? 1n : -1n));
  return BITS.getFloat64(0);
}
