import type { BallState } from '../ball/ball-state';
import { bracketedRoot } from '../numerics/bracketed-root';
import { length } from '../numerics/length';
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
    if (phase.drag !== null) {
      const beyond = (timeS: number) => this.beyond(phase, timeS);
      return bracketedRoot(beyond, 0, before, phase.durationS, atEnd, 0, CROSSED_M).x;
    }
    if (before >= 0) return 0;
    const speed = phase.linearX * this.sin + phase.linearY * this.cos;
    const pull = 2 * (phase.quadraticX * this.sin + phase.quadraticY * this.cos);
    const root = Math.sqrt(Math.max(0, speed * speed - 2 * pull * before));
    const sinceS = speed > 0 ? (-2 * before) / (speed + root) : (root - speed) / pull;
    return Math.min(phase.durationS, sinceS);
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
