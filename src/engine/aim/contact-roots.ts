import type { Phase } from '../model/phase';
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
    for (const times of touchingSpans(phase, prober)) {
      for (const flank of FLANKS) aims.push(...flankRoots(phase, times, flank, prober));
    }
  }
  return aims;
}

function flankRoots(
  phase: Phase,
  times: readonly number[],
  flank: Flank,
  prober: ContactProber,
): number[] {
  const aims: number[] = [];
  const missAt = (timeS: number) => {
    prober.look(phase, timeS, flank);
    return prober.objectMiss(phase, timeS);
  };
  let before = { timeS: 0, miss: Number.NaN, closing: false };
  for (const timeS of times) {
    prober.look(phase, timeS, flank);
    const closing = prober.probe.closingMps > 0;
    const now = { timeS, miss: signedMiss(phase, timeS, prober), closing };
    if ((closing || before.closing) && changesSign(before.miss, now.miss)) {
      const root = bracketedRoot(
        missAt,
        before.timeS,
        before.miss,
        timeS,
        now.miss,
        TIME_TOLERANCE,
        MISS_TOLERANCE,
      );
      const { aimRad, closingMps } = prober.look(phase, root.x, flank);
      if (closingMps > 0) aims.push(aimRad);
    }
    before = now;
  }
  return aims;
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
