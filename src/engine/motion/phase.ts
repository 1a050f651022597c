import { type BallState, spinLeft } from '../ball/ball-state';
import { SPIN_SHARE } from '../ball/inertia';
import { type CoulombDrag, draggedAt } from './coulomb-drag';

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

/** Where the centre is and how it moves. A scratch pad that a caller owns and may use again. */
export interface Place {
  xM: number;
  yM: number;
  zM: number;
  vx: number;
  vy: number;
  vz: number;
}

/** A fresh scratch pad for {@link placeAt}. */
export function newPlace(): Place {
  return { xM: 0, yM: 0, zM: 0, vx: 0, vy: 0, vz: 0 };
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
  if (phase.drag === null) return;
  const dragged = draggedAt(phase.drag, timeS);
  place.xM += phase.dragShare * dragged.dx;
  place.yM += phase.dragShare * dragged.dy;
  place.vx += phase.dragShare * dragged.wx;
  place.vy += phase.dragShare * dragged.wy;
}

/** The whole state at a time since the phase's start (s). */
export function stateAt(phase: Phase, timeS: number): BallState {
  const place = newPlace();
  placeAt(phase, timeS, place);
  return stateFrom(phase, timeS, place);
}

/** The whole state at a time (s) whose place is known already. */
export function stateFrom(phase: Phase, timeS: number, place: Place): BallState {
  const { start, radiusM } = phase;
  const wz = spinLeft(start.wz, phase.spinDecay, timeS);
  if (phase.motion === 'rolling') {
    return stateOf(place, place.zM, -place.vy / radiusM, place.vx / radiusM, wz);
  }
  if (phase.motion === 'flying') return stateOf(place, place.zM, start.wx, start.wy, wz);
  // The cloth's push on the centre turns the ball by the same impulse at its lowest point.
  const spin = SPIN_SHARE / radiusM;
  const pushedX = place.vx - start.vx - phase.freeX * timeS;
  const pushedY = place.vy - start.vy - phase.freeY * timeS;
  return stateOf(place, 0, start.wx + spin * pushedY, start.wy - spin * pushedX, wz);
}

/** The state in which the phase ends, with what must then be exactly zero made so. */
export function endState(phase: Phase): BallState {
  const { xM, yM, vx, vy, vz, wx, wy, wz } = stateAt(phase, phase.durationS);
  if (phase.motion === 'flying') return { xM, yM, zM: 0, vx, vy, vz, wx, wy, wz };
  if (phase.motion === 'rolling') {
    return { xM, yM, zM: 0, vx: 0, vy: 0, vz: 0, wx: 0, wy: 0, wz };
  }
  const { radiusM } = phase;
  return { xM, yM, zM: 0, vx, vy, vz: 0, wx: -vy / radiusM, wy: vx / radiusM, wz };
}

function stateOf(place: Place, zM: number, wx: number, wy: number, wz: number): BallState {
  const { xM, yM, vx, vy, vz } = place;
  return { xM, yM, zM, vx, vy, vz, wx, wy, wz };
}
