import { type BallState, type Pad, padOf, restingAt, spinLeft } from '../ball/ball-state';
import { SPIN_SHARE } from '../ball/inertia';
import { addDragged, type CoulombDrag } from './coulomb-drag';

/** What a ball is doing between two events. */
export type Motion = 'sliding' | 'rolling' | 'flying';

/**
 * One closed-form stretch of a ball's motion. Its centre is at start + linear·t + quadratic·t²,
 * plus, on a tilted bed, dragShare times the displacement of a velocity under Coulomb drag, t being
 * the time since the phase began.
 */
export interface Phase {
  readonly motion: Motion;
  readonly start: BallState;
  readonly startS: number;
  readonly durationS: number;
  /** m/s */
  readonly linearX: number;
  readonly linearY: number;
  readonly linearZ: number;
  /** Half the acceleration, m/s². */
  readonly quadraticX: number;
  readonly quadraticY: number;
  readonly quadraticZ: number;
  readonly drag: CoulombDrag | null;
  readonly dragShare: number;
  /** Acceleration of the centre that no cloth friction causes, m/s². */
  readonly freeX: number;
  readonly freeY: number;
  /** Upper bound of the size of the centre's acceleration, m/s². */
  readonly accelerationBound: number;
  /** How fast spin about the vertical dies, rad/s². */
  readonly spinDecay: number;
  readonly radiusM: number;
}

/** A pad that {@link Phase}s are written into, one after another. All are made here: of one shape. */
export function newPhase(start: BallState): Pad<Phase> {
  return {
    motion: 'flying',
    start,
    startS: 0,
    durationS: 0,
    linearX: 0,
    linearY: 0,
    linearZ: 0,
    quadraticX: 0,
    quadraticY: 0,
    quadraticZ: 0,
    drag: null,
    dragShare: 0,
    freeX: 0,
    freeY: 0,
    accelerationBound: 0,
    spinDecay: 0,
    radiusM: 0,
  };
}

/** Where the centre is and how it moves. A scratch pad that a caller owns and may use again. */
export type Place = Pick<Pad<BallState>, 'xM' | 'yM' | 'zM' | 'vx' | 'vy' | 'vz'>;

/** A fresh scratch pad for {@link placeAt}. */
export function newPlace(): Pad<BallState> {
  return padOf(restingAt(0, 0));
}

/** Writes position and velocity at a time since the phase's start (s) into `place`. */
export function placeAt(phase: Phase, timeS: number, place: Place): void {
  const { start } = phase;
  place.xM = start.xM + (phase.linearX + phase.quadraticX * timeS) * timeS;
  place.yM = start.yM + (phase.linearY + phase.quadraticY * timeS) * timeS;
  place.zM = Math.max(0, start.zM + (phase.linearZ + phase.quadraticZ * timeS) * timeS);
  place.vx = phase.linearX + 2 * phase.quadraticX * timeS;
  place.vy = phase.linearY + 2 * phase.quadraticY * timeS;
  place.vz = phase.linearZ + 2 * phase.quadraticZ * timeS;
  if (phase.drag !== null) addDragged(phase.drag, phase.dragShare, timeS, place);
}

/** The whole state at a time since the phase's start (s). */
export function stateAt(phase: Phase, timeS: number): Pad<BallState> {
  const ball = newPlace();
  placeAt(phase, timeS, ball);
  fillSpin(phase, timeS, ball);
  return ball;
}

/** Writes the spin at a time (s) into a ball whose place at that time is there already. */
export function fillSpin(phase: Phase, timeS: number, ball: Pad<BallState>): void {
  const { start, radiusM } = phase;
  ball.wz = spinLeft(start.wz, phase.spinDecay, timeS);
  if (phase.motion === 'rolling') {
    ball.wx = -ball.vy / radiusM;
    ball.wy = ball.vx / radiusM;
  } else if (phase.motion === 'flying') {
    ball.wx = start.wx;
    ball.wy = start.wy;
  } else {
    // The cloth's push on the centre turns the ball by the same impulse at its lowest point.
    const spin = SPIN_SHARE / radiusM;
    ball.zM = 0;
    ball.wx = start.wx + spin * (ball.vy - start.vy - phase.freeY * timeS);
    ball.wy = start.wy - spin * (ball.vx - start.vx - phase.freeX * timeS);
  }
}

/** The state in which the phase ends, with what must then be exactly zero made so. */
export function endState(phase: Phase): BallState {
  const ball = newPlace();
  fillEnd(phase, ball);
  return ball;
}

/** Writes {@link endState} into a ball. */
export function fillEnd(phase: Phase, ball: Pad<BallState>): void {
  placeAt(phase, phase.durationS, ball);
  ball.zM = 0;
  if (phase.motion === 'flying') {
    fillSpin(phase, phase.durationS, ball);
    return;
  }
  ball.vz = 0;
  if (phase.motion === 'rolling') {
    ball.vx = 0;
    ball.vy = 0;
    ball.wx = 0;
    ball.wy = 0;
  } else {
    ball.wx = -ball.vy / phase.radiusM;
    ball.wy = ball.vx / phase.radiusM;
  }
  ball.wz = spinLeft(phase.start.wz, phase.spinDecay, phase.durationS);
}
