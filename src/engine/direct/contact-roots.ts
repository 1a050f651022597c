import type { Phase } from '../motion/phase';
import { bracketedRoot } from '../numerics/bracketed-root';
import { dipThroughZero } from '../numerics/dip-through-zero';
import type { ContactProber, Flank } from './contact-probe';
import { touchingSpans } from './touching-spans';

/** Absolute, rad and s: at the rounding of the geometry. */
const MISS_TOLERANCE = 1e-13;
const TIME_TOLERANCE = 1e-16;
/** Slower than this, m/s, nothing is struck: where a ball comes to rest its speed is rounding. */
const LEAST_CLOSING_MPS = 1e-9;

/**
 * Adds every aim at which some contact in a phase would send the object ball along the target line,
 * unordered. The path starts at the origin with the cue along y. Whether the contact is the *first*
 * touch at its aim is for the caller to check.
 */
export function addContactRoots(phase: Phase, prober: ContactProber, aims: number[]): void {
  for (const times of touchingSpans(phase, prober)) searchSpan(phase, times, prober, aims);
}

/** The contacts at the sample times, on one flank. */
interface Looks {
  readonly flank: Flank;
  readonly times: readonly number[];
  /** How far right of the target line each sends the object ball, as a rough bearing. */
  readonly misses: number[];
  /** False where only the sign of the miss is right, and zero is out of its reach. */
  readonly exact: boolean[];
}

function searchSpan(
  phase: Phase,
  times: readonly number[],
  prober: ContactProber,
  aims: number[],
): void {
  const left: Looks = { flank: -1, times, misses: [], exact: [] };
  const right: Looks = { flank: 1, times, misses: [], exact: [] };
  for (const timeS of times) {
    prober.goTo(phase, timeS);
    look(phase, timeS, prober, left);
    look(phase, timeS, prober, right);
  }
  searchFlank(phase, left, prober, aims);
  searchFlank(phase, right, prober, aims);
}

function look(phase: Phase, timeS: number, prober: ContactProber, looks: Looks): void {
  const { flank, misses, exact } = looks;
  prober.lookAlongLine(flank);
  // Where friction cannot decide the sign, the line of centres tells it, at a fifth of the cost.
  const isTold = prober.isToldByLine();
  if (!isTold) prober.lookAtContact(phase, timeS);
  misses.push(isTold ? prober.lineMiss() : prober.roughMiss());
  exact.push(!isTold);
}

function searchFlank(phase: Phase, looks: Looks, prober: ContactProber, aims: number[]): void {
  const { flank, times, misses } = looks;
  for (let index = 1; index < times.length; index++) {
    const isCrossing = changesSign(misses[index - 1] ?? 0, misses[index] ?? 0, HALF_TURN);
    if (!isCrossing && !isLow(looks, index - 1) && !isLow(looks, index)) continue;
    const search = new MissSearch(phase, flank, prober, aims);
    search.between(times[index - 1] ?? 0, times[index] ?? 0, isCrossing);
  }
}

/** A search for aims in a stretch of a phase, on one flank. */
class MissSearch {
  constructor(
    private readonly phase: Phase,
    private readonly flank: Flank,
    private readonly prober: ContactProber,
    private readonly aims: number[],
  ) {}

  /** @param isCrossing whether the miss changes sign there; else it may dip through zero */
  between(fromS: number, toS: number, isCrossing: boolean): void {
    const from = this.missAt(fromS);
    const closesAtStart = this.closes();
    const to = this.missAt(toS);
    if (!closesAtStart && !this.closes()) return;
    if (isCrossing) this.addRoot(fromS, from, toS, to);
    else this.addRootsOfDip(fromS, from, toS, to);
  }

  private readonly missAt = (timeS: number): number => {
    this.prober.look(this.phase, timeS, this.flank);
    return this.prober.objectMiss();
  };

  private closes(): boolean {
    return this.prober.closingMps > LEAST_CLOSING_MPS;
  }

  private addRoot(fromS: number, from: number, toS: number, to: number): void {
    const root = bracketedRoot(this.missAt, fromS, from, toS, to, TIME_TOLERANCE, MISS_TOLERANCE);
    this.prober.look(this.phase, root.x, this.flank);
    if (this.closes()) this.aims.push(this.prober.aimRad());
  }

  private addRootsOfDip(fromS: number, from: number, toS: number, to: number): void {
    const dipS = dipThroughZero(this.missAt, fromS, from, toS, to);
    if (dipS === null) return;
    const dip = this.missAt(dipS);
    this.addRoot(fromS, from, dipS, dip);
    this.addRoot(dipS, dip, toS, to);
  }
}

/** Whether the miss is nearer zero here than on either side: next to here it may dip through it. */
function isLow({ misses, exact }: Looks, index: number): boolean {
  if (exact[index] !== true) return false;
  const here = misses[index] ?? Number.NaN;
  return isLower(here, misses[index - 1]) && isLower(here, misses[index + 1]);
}

function isLower(miss: number, beside: number | undefined): boolean {
  if (beside === undefined) return true;
  return beside > 0 === miss > 0 && Math.abs(beside) >= Math.abs(miss);
}

/** Half a turn, as a rough bearing. */
const HALF_TURN = 2;

/** Opposite signs, and not by the direction's wrapping round behind. NaN changes nothing. */
export function changesSign(a: number, b: number, halfTurn = Math.PI): boolean {
  return a > 0 !== b > 0 && Math.abs(a - b) < halfTurn;
}
