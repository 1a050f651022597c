import { length } from '../numerics/length';

/**
 * A velocity w under a drag of constant size against it and a constant push: ẇ = −a·w/|w| + b,
 * with |b| < a, so that it always comes to rest. On a tilted bed both the slip of a sliding ball
 * and the velocity of a rolling one obey it.
 *
 * The solution is exact. With w∥ and w⊥ the components along and across b, and |w⊥| = |w| sech m,
 * w∥ = −|w| tanh m, the equations of motion give
 *   a|w| + b·w falls linearly, at the rate a² − b², and
 *   m − m0 = (b/a) ln(w⊥/w⊥0),
 * one increasing scalar equation for ln w⊥ at a given time. The distances ∫w∥dt and ∫w⊥dt then
 * follow from d(|w|²), d(|w|w∥), d(w∥²), d(|w|w⊥) and d(w⊥w∥) without quadrature. Re-derived here;
 * its error is rounding.
 */
export interface CoulombDrag {
  /** Starting velocity, along and across the push, m/s. */
  readonly along0: number;
  readonly across0: number;
  /** a and b, m/s². */
  readonly drag: number;
  readonly push: number;
  /** Unit vector of the push. */
  readonly pushX: number;
  readonly pushY: number;
  /** m at the start; NaN where the velocity lies along the push and stays there. */
  readonly m0: number;
  /** ln(cosh m0 − (b/a) sinh m0). */
  readonly logWeight0: number;
  /** Time to rest, s. */
  readonly durationS: number;
}

/** Velocity and displacement at an instant, m/s and m. */
export interface Dragged {
  readonly wx: number;
  readonly wy: number;
  readonly dx: number;
  readonly dy: number;
}

/** Newton on a nearly straight line: two or three rounds reach rounding, the cap is never met. */
const MAX_ROUNDS = 40;
/** A step this small leaves an error of its square, times b/a: below rounding. */
const LAST_STEP = 1e-8;
/** A push this small, m/s², is no push: halfway to the smallest double, its direction is rounding. */
const NO_PUSH = 1e-150;
/** A direction this close to the push's line, rad, is taken as on it: the bend is beyond a double. */
const ALIGNED = 1e-12;

/** @throws RangeError when the push is not weaker than the drag, for then nothing stops */
export function coulombDrag(
  wx: number,
  wy: number,
  drag: number,
  bx: number,
  by: number,
): CoulombDrag {
  const push = length(bx, by);
  if (!(push < drag)) throw new RangeError(`push ${push} must be below drag ${drag} m/s²`);
  const pushX = push > NO_PUSH ? bx / push : 0;
  const pushY = push > NO_PUSH ? by / push : 1;
  const along0 = wx * pushX + wy * pushY;
  const across0 = wy * pushX - wx * pushY;
  const size = length(wx, wy);
  const durationS = (drag * size + push * along0) / ((drag - push) * (drag + push));
  const m0 =
    Math.abs(across0) <= ALIGNED * size ? Number.NaN : -Math.asinh(along0 / Math.abs(across0));
  const logWeight0 = logWeight(m0, push / drag);
  return { along0, across0, drag, push, pushX, pushY, m0, logWeight0, durationS };
}

/** @param timeS from 0 to the drag's duration */
export function draggedAt(motion: CoulombDrag, timeS: number): Dragged {
  const left = 1 - timeS / motion.durationS;
  const { along, across } = left > 0 ? velocityWith(motion, left) : { along: 0, across: 0 };
  const { forward, sideways } = displacement(motion, along, across);
  const { pushX, pushY } = motion;
  return {
    wx: along * pushX - across * pushY,
    wy: along * pushY + across * pushX,
    dx: forward * pushX - sideways * pushY,
    dy: forward * pushY + sideways * pushX,
  };
}

/** @param left share of a|w| + b·w that is still there, above 0 */
function velocityWith(motion: CoulombDrag, left: number) {
  const { along0, across0, drag, push, m0, logWeight0, durationS } = motion;
  if (Number.isNaN(m0)) return { along: along0 * left, across: 0 };
  const ratio = push / drag;
  const logLeft = Math.log(left);
  let fall = logLeft;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const m = m0 + ratio * fall;
    const excess = fall + logWeight(m, ratio) - logLeft - logWeight0;
    const step = (excess * (1 - ratio * Math.tanh(m))) / (1 - ratio * ratio);
    fall -= step;
    if (Math.abs(step) <= LAST_STEP) break;
  }
  // From m alone: w⊥ itself may by now be too small for a double, while w∥ is not.
  const m = m0 + ratio * fall;
  const tanh = Math.tanh(m);
  const size = (left * durationS * (drag - push) * (drag + push)) / (drag - push * tanh);
  return { along: -size * tanh, across: (Math.sign(across0) * size) / Math.cosh(m) };
}

/** ln(cosh m − ratio·sinh m), safe for large |m|. */
function logWeight(m: number, ratio: number): number {
  const size = Math.abs(m);
  const lead = 1 - ratio * Math.sign(m);
  const rest = 1 + ratio * Math.sign(m);
  return size + Math.log((lead + rest * Math.exp(-2 * size)) / 2);
}

/** Distance run since the start, along and across the push, from the velocity now. */
function displacement(motion: CoulombDrag, along: number, across: number) {
  const { along0, across0, drag: a, push: b } = motion;
  const size = length(along, across);
  const size0 = length(along0, across0);
  const square = size * size - size0 * size0;
  const sizeAlong = size * along - size0 * along0;
  const alongAlong = along * along - along0 * along0;
  const sizeAcross = size * across - size0 * across0;
  const acrossAlong = across * along - across0 * along0;
  return {
    forward: -(2 * a * sizeAlong + b * (square + alongAlong)) / (4 * (a - b) * (a + b)),
    sideways: -(2 * a * sizeAcross + b * acrossAlong) / ((2 * a - b) * (2 * a + b)),
  };
}
