import type { BallState } from '../ball/ball-state';
import { bracketedRoot } from '../numerics/bracketed-root';
import { length } from '../numerics/length';
import { newPlace, type Phase, placeAt, stateAt } from './phase';

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

/** The ball as it crosses a line in a run; the crossing is one of the run's own. */
export function ballCrossing(phases: readonly Phase[], { timeS }: Crossing): BallState | null {
  const phase = phases.filter(({ startS }) => startS <= timeS).at(-1);
  return phase === undefined ? null : stateAt(phase, timeS - phase.startS);
}

/** The line counts as crossed this near it, m. */
const CROSSED_M = 1e-9;

/** The first crossing of a run, or null where it ends before the line. */
export function lineCrossing(phases: readonly Phase[], line: AcrossLine): Crossing | null {
  const { fromXM, fromYM, alongRad, distanceM } = line;
  const [sin, cos] = [Math.sin(alongRad), Math.cos(alongRad)];
  const place = newPlace();
  const beyond = (phase: Phase, timeS: number) => {
    placeAt(phase, timeS, place);
    return (place.xM - fromXM) * sin + (place.yM - fromYM) * cos - distanceM;
  };
  for (const phase of phases) {
    const end = phase.durationS;
    const atEnd = beyond(phase, end);
    if (atEnd < 0) continue;
    const before = beyond(phase, 0);
    const at = bracketedRoot((t) => beyond(phase, t), 0, before, end, atEnd, 0, CROSSED_M);
    placeAt(phase, at.x, place);
    const rightM = (place.xM - fromXM) * cos - (place.yM - fromYM) * sin;
    return { rightM, timeS: phase.startS + at.x, speedMps: length(place.vx, place.vy) };
  }
  return null;
}
