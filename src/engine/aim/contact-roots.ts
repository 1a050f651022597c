import { type Phase, placeAt } from '../model/phase';
import { bracketedRoot } from '../numerics/bracketed-root';
import type { ContactProber, Flank } from './contact-probe';
import { touchingSpans } from './touching-spans';

/** Both sides on which the object ball can lie. */
export const FLANKS: readonly Flank[] = [-1, 1];
/** Absolute, rad and s: at the rounding of the geometry. */
const MISS_TOLERANCE = 1e-13;
const TIME_TOLERANCE = 1e-16;

/**
 * Every aim at which some contact on the path would send the object ball along the target line,
 * unordered. The path starts at the origin with the cue along y. Whether the contact is the *first*
 * touch at its aim is for the caller to check.
 */
export function contactRoots(path: readonly Phase[], prober: ContactProber): number[] {
  const aims: number[] = [];
  for (const phase of path) {
    for (const times of touchingSpans(phase, prober)) searchSpan(phase, times, prober, aims);
  }
  return aims;
}

/** The contact at a sample time, on one flank. */
interface Look {
  readonly timeS: number;
  readonly miss: number;
  readonly closing: boolean;
}

function searchSpan(
  phase: Phase,
  times: readonly number[],
  prober: ContactProber,
  aims: number[],
): void {
  const before: (Look | undefined)[] = [];
  for (const timeS of times) {
    placeAt(phase, timeS, prober.place);
    const looks = FLANKS.map((flank) => lookAt(phase, timeS, flank, prober));
    FLANKS.forEach((flank, index) => {
      const aim = rootBetween(phase, flank, before[index], looks[index], prober);
      if (aim !== null) aims.push(aim);
      before[index] = looks[index];
    });
  }
}

/** From the prober's place, which is already that of `timeS`. */
function lookAt(phase: Phase, timeS: number, flank: Flank, prober: ContactProber): Look {
  prober.lookFromPlace(flank);
  const closing = prober.probe.closingMps > 0;
  return { timeS, miss: signedMiss(phase, timeS, prober), closing };
}

function rootBetween(
  phase: Phase,
  flank: Flank,
  a: Look | undefined,
  b: Look | undefined,
  prober: ContactProber,
): number | null {
  if (a === undefined || b === undefined) return null;
  if (!(a.closing || b.closing) || !changesSign(a.miss, b.miss)) return null;
  const missAt = (timeS: number) => {
    prober.look(phase, timeS, flank);
    return prober.objectMiss(phase, timeS);
  };
  const [fromS, toS] = [a.timeS, b.timeS];
  const root = bracketedRoot(missAt, fromS, a.miss, toS, b.miss, TIME_TOLERANCE, MISS_TOLERANCE);
  const { aimRad, closingMps } = prober.look(phase, root.x, flank);
  return closingMps > 0 ? aimRad : null;
}

/**
 * The miss where friction could decide its sign; elsewhere the line of centres tells the sign, at a
 * third of the cost.
 */
function signedMiss(phase: Phase, timeS: number, prober: ContactProber): number {
  const line = prober.lineMiss();
  return Math.abs(line) > prober.mostThrow() ? line : prober.objectMiss(phase, timeS);
}

/** Opposite signs, and not by the direction's wrapping round behind. NaN changes nothing. */
export function changesSign(a: number, b: number): boolean {
  return a > 0 !== b > 0 && Math.abs(a - b) < Math.PI;
}
