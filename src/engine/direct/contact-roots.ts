import { type Phase, placeAt } from '../motion/phase';
import { bracketedRoot } from '../numerics/bracketed-root';
import { dipThroughZero } from '../numerics/dip-through-zero';
import type { ContactProber, Flank } from './contact-probe';
import { touchingSpans } from './touching-spans';

/** Both sides on which the object ball can lie. */
export const FLANKS: readonly Flank[] = [-1, 1];
/** Absolute, rad and s: at the rounding of the geometry. */
const MISS_TOLERANCE = 1e-13;
const TIME_TOLERANCE = 1e-16;
/** Slower than this, m/s, nothing is struck: where a ball comes to rest its speed is rounding. */
const LEAST_CLOSING_MPS = 1e-9;

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
  /** How far right of the target line it sends the object ball, rad. */
  readonly miss: number;
  /** False where only the sign of the miss is right, and zero is out of its reach. */
  readonly exact: boolean;
  readonly closing: boolean;
}

function searchSpan(
  phase: Phase,
  times: readonly number[],
  prober: ContactProber,
  aims: number[],
): void {
  const looks = FLANKS.map((flank) => ({ flank, onFlank: [] as Look[] }));
  for (const timeS of times) {
    placeAt(phase, timeS, prober.place);
    for (const { flank, onFlank } of looks) onFlank.push(lookAt(phase, timeS, flank, prober));
  }
  for (const { flank, onFlank } of looks) searchFlank(phase, flank, onFlank, prober, aims);
}

/** From the prober's place, which is already that of `timeS`. */
function lookAt(phase: Phase, timeS: number, flank: Flank, prober: ContactProber): Look {
  prober.lookFromPlace(flank);
  const closing = prober.probe.closingMps > LEAST_CLOSING_MPS;
  const line = prober.lineMiss();
  // Where friction cannot decide the sign, the line of centres tells it, at a third of the cost.
  return Math.abs(line) > prober.mostThrow()
    ? { timeS, miss: line, exact: false, closing }
    : { timeS, miss: prober.objectMiss(phase, timeS), exact: true, closing };
}

function searchFlank(
  phase: Phase,
  flank: Flank,
  looks: readonly Look[],
  prober: ContactProber,
  aims: number[],
): void {
  const missAt = (timeS: number) => {
    prober.look(phase, timeS, flank);
    return prober.objectMiss(phase, timeS);
  };
  const searchBetween = (fromS: number, from: number, toS: number, to: number) => {
    const root = bracketedRoot(missAt, fromS, from, toS, to, TIME_TOLERANCE, MISS_TOLERANCE);
    const { aimRad, closingMps } = prober.look(phase, root.x, flank);
    if (closingMps > LEAST_CLOSING_MPS) aims.push(aimRad);
  };
  for (const [index, b] of looks.entries()) {
    const a = looks[index - 1];
    if (a === undefined || !(a.closing || b.closing)) continue;
    if (changesSign(a.miss, b.miss)) {
      searchBetween(a.timeS, a.miss, b.timeS, b.miss);
    } else if (isLow(looks, index - 1) || isLow(looks, index)) {
      const dipS = dipThroughZero(missAt, a.timeS, a.miss, b.timeS, b.miss);
      if (dipS === null) continue;
      const dip = missAt(dipS);
      searchBetween(a.timeS, a.miss, dipS, dip);
      searchBetween(dipS, dip, b.timeS, b.miss);
    }
  }
}

/** Whether the miss is nearer zero here than on either side: next to here it may dip through it. */
function isLow(looks: readonly Look[], index: number): boolean {
  const here = looks[index];
  return here?.exact === true && isLower(here, looks[index - 1]) && isLower(here, looks[index + 1]);
}

function isLower({ miss }: Look, beside: Look | undefined): boolean {
  if (beside === undefined) return true;
  return beside.miss > 0 === miss > 0 && Math.abs(beside.miss) >= Math.abs(miss);
}

/** Opposite signs, and not by the direction's wrapping round behind. NaN changes nothing. */
export function changesSign(a: number, b: number): boolean {
  return a > 0 !== b > 0 && Math.abs(a - b) < Math.PI;
}
