import { type BallState, type Pad, spinLeft } from '../ball/ball-state';
import type { Kit } from '../kit/kit';
import { fillNext } from '../motion/next-phase';
import { newPhase, type Phase, type Place, placeAt, stateAt } from '../motion/phase';
import { fillPhaseBox, fillPointBox, type PlanBox, pointBox } from './plan-box';
import type { Outcome } from './table-play';

/** A ball while a stroke is played out. */
export interface Mover {
  /** Its place in the list of balls; 0 is the cue ball. */
  readonly number: number;
  /** Null while it lies still, and once it has left the bed. */
  phase: Pad<Phase> | null;
  /** How it was when its present motion, or its rest, began, and when that was, s. */
  state: BallState;
  sinceS: number;
  /** Holds its centre until its motion changes. */
  readonly box: Pad<PlanBox>;
  /** What it did until now; empty where it never moved. Null: it is not to be told. */
  readonly past: Phase[] | null;
  /** Set once it has left the bed. */
  gone: Outcome | null;
}

export function restingMover(number: number, state: BallState, isTold: boolean): Mover {
  const box = pointBox(state.xM, state.yM);
  return { number, phase: null, state, sinceS: 0, box, past: isTold ? [] : null, gone: null };
}

/** When its phase ends by itself, s. */
export function phaseEnd(mover: Mover): number {
  const { phase } = mover;
  return phase === null ? Number.POSITIVE_INFINITY : phase.startS + phase.durationS;
}

/** Writes its place and velocity at a time (s) into `place`. */
export function placeOf(mover: Mover, clockS: number, place: Place): void {
  const { phase, state } = mover;
  if (phase !== null) {
    placeAt(phase, clockS - phase.startS, place);
    return;
  }
  place.xM = state.xM;
  place.yM = state.yM;
  place.zM = state.zM;
  place.vx = 0;
  place.vy = 0;
  place.vz = 0;
}

/** Its whole state at a time, s. A ball that lies still may spin on the spot, ever more slowly. */
export function stateOf(mover: Mover, clockS: number, kit: Kit): BallState {
  const { phase, state } = mover;
  if (phase !== null) return stateAt(phase, clockS - phase.startS);
  if (state.wz === 0) return state;
  return { ...state, wz: spinLeft(state.wz, kit.spinDecayRadS2, clockS - mover.sinceS) };
}

/** Goes on from a state, which becomes the mover's own, at a time (s) as bed and cloth have it. */
export function setOff(mover: Mover, state: Pad<BallState>, clockS: number, kit: Kit): void {
  close(mover, clockS);
  const pad = mover.past === null && mover.phase !== null ? mover.phase : newPhase(state);
  const phase = fillNext(pad, state, clockS, kit) ? pad : null;
  mover.phase = phase;
  mover.sinceS = clockS;
  mover.state = phase === null ? stilled(state) : phase.start;
  if (phase === null) fillPointBox(mover.box, state.xM, state.yM);
  else fillPhaseBox(mover.box, phase);
}

/** Takes a ball off the bed. */
export function takeOff(mover: Mover, outcome: Outcome, state: BallState, clockS: number): void {
  close(mover, clockS);
  mover.phase = null;
  mover.state = state;
  mover.sinceS = clockS;
  mover.gone = outcome;
}

/** Puts what it did up to now among what is past, cut short at a time, s. */
function close(mover: Mover, clockS: number): void {
  const { phase, past } = mover;
  if (phase === null || past === null) return;
  phase.durationS = Math.min(phase.durationS, clockS - phase.startS);
  if (phase.durationS > 0) past.push(phase);
}

function stilled({ xM, yM, wz }: BallState): BallState {
  return { xM, yM, zM: 0, vx: 0, vy: 0, vz: 0, wx: 0, wy: 0, wz };
}
