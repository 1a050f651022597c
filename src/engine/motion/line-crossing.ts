import type { BallState } from '../ball/ball-state';
import { bracketedRoot } from '../numerics/bracketed-root';
import { length } from '../numerics/length';
import { timeToCross } from './first-touch';
import { newPlace, type Phase, placeAt, stateAt } from './phase';
import type { Run, Watch } from './run';

/** A line square across a ball's way. */
export interface AcrossLine {
  /** What the distance is measured from, m. */
  readonly fromXM: number;
  readonly fromYM: number;
  /** The way, rad from y, right +. */
  readonly alongRad: number;
  /** How far along the way the line lies, m. */
  readonly distanceM: number;
}

/** Where and when a ball's centre crosses a line. */
export interface Crossing {
  /** From the way, right +, m. */
  readonly rightM: number;
  /** On the clock of the phases, s. */
  readonly timeS: number;
  /** Over the bed, m/s. */
  readonly speedMps: number;
}

/** The ball as it crosses a line, of a run that was left in the phase of that crossing. */
export function ballCrossing({ phase }: Run, { timeS }: Crossing): BallState {
  return stateAt(phase, timeS - phase.startS);
}

/** The line counts as crossed this near it, m. */
const CROSSED_M = 1e-9;
const NEWTON_ROUNDS = 6;

/**
 * The first crossing of a run, which is left in the phase of it; null where it ends before the line.
 */
export function lineCrossing(run: Run, line: AcrossLine): Crossing | null {
  const watch = new LineWatch(line);
  while (run.next(watch)) {
    const crossing = watch.crossingIn(run.phase);
    if (crossing !== null) return crossing;
  }
  return null;
}

class LineWatch implements Watch {
  private readonly sin: number;
  private readonly cos: number;
  private readonly place = newPlace();

  constructor(private readonly line: AcrossLine) {
    this.sin = Math.sin(line.alongRad);
    this.cos = Math.cos(line.alongRad);
  }

  clearM(xM: number, yM: number): number {
    return -this.beyondPlace(xM, yM);
  }

  /** The crossing in a phase that begins before the line; null where it ends there too. */
  crossingIn(phase: Phase): Crossing | null {
    const atEnd = this.beyond(phase, phase.durationS);
    if (atEnd < 0) return null;
    const sinceS = this.crossedAt(phase, atEnd);
    placeAt(phase, sinceS, this.place);
    const { xM, yM, vx, vy } = this.place;
    const { fromXM, fromYM } = this.line;
    const rightM = (xM - fromXM) * this.cos - (yM - fromYM) * this.sin;
    return { rightM, timeS: phase.startS + sinceS, speedMps: length(vx, vy) };
  }

  private crossedAt(phase: Phase, atEnd: number): number {
    const before = this.beyond(phase, 0);
    if (before >= 0) return 0;
    const { durationS } = phase;
    const speed = this.speed();
    if (phase.drag === null) {
      const pull = 2 * (phase.quadraticX * this.sin + phase.quadraticY * this.cos);
      return Math.min(durationS, timeToCross(-before, speed, pull));
    }
    // The parabola with the same beginning and end is a first guess, and Newton's rule does the rest.
    const pull = (2 * (atEnd - before - speed * durationS)) / (durationS * durationS);
    return this.closeIn(phase, before, atEnd, timeToCross(-before, speed, pull));
  }

  /** Newton's rule between a start before the line and an end beyond it; else by halves. */
  private closeIn(phase: Phase, before: number, atEnd: number, guessS: number): number {
    let timeS = guessS;
    for (let round = 0; round < NEWTON_ROUNDS; round++) {
      if (!(timeS > 0 && timeS < phase.durationS)) break;
      const beyondM = this.beyond(phase, timeS);
      if (Math.abs(beyondM) <= CROSSED_M) return timeS;
      timeS -= beyondM / this.speed();
    }
    const beyond = (at: number) => this.beyond(phase, at);
    return bracketedRoot(beyond, 0, before, phase.durationS, atEnd, 0, CROSSED_M).x;
  }

  /** How fast the last place looked at goes towards the line, m/s. */
  private speed(): number {
    return this.place.vx * this.sin + this.place.vy * this.cos;
  }

  /** How far beyond the line the centre is, m. */
  private beyond(phase: Phase, timeS: number): number {
    placeAt(phase, timeS, this.place);
    return this.beyondPlace(this.place.xM, this.place.yM);
  }

  private beyondPlace(xM: number, yM: number): number {
    const { fromXM, fromYM, distanceM } = this.line;
    return (xM - fromXM) * this.sin + (yM - fromYM) * this.cos - distanceM;
  }
}
