import { type BallState, restingAt, spinLeft } from '../ball/ball-state';
import { type Phase, stateAt } from '../motion/phase';
import type { BallRun } from './table-play';

/** One phase begins where the last one ends, but for rounding, s. */
const ROUNDING_S = 1e-12;

/** A ball at a time (s) of a stroke, for drawing; null from when it leaves the bed. */
export function ballAt({ from, phases, outcome }: BallRun, timeS: number): BallState | null {
  const isGone = outcome.kind === 'pocketed' || outcome.kind === 'off-table';
  if (isGone && timeS >= outcome.timeS) return null;
  const phase = phases.filter(({ startS }) => startS <= timeS).at(-1);
  if (phase === undefined) return restingAt(from.xM, from.yM);
  const sinceS = timeS - phase.startS;
  const pastS = sinceS - phase.durationS;
  if (pastS < ROUNDING_S) return stateAt(phase, Math.min(sinceS, phase.durationS));
  return stillAfter(phase, pastS);
}

/** It lies still until the next of its phases, but may spin on the spot for a while. */
function stillAfter(phase: Phase, pastS: number): BallState {
  const { xM, yM, wz } = stateAt(phase, phase.durationS);
  return { ...restingAt(xM, yM), wz: spinLeft(wz, phase.spinDecay, pastS) };
}
