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
  /** |w| at the start, m/s. */
  readonly size0: number;
  /** m at the start; NaN where the velocity lies along the push and stays there. */
  readonly m0: number;
  /** ln(cosh m0 − (b/a) sinh m0). */
  readonly logWeight0: number;
  /** Time to rest, s. */
  readonly durationS: number;
}

/** What moves under a drag is added to. A scratch pad. */
interface Dragged {
  xM: number;
  yM: number;
  vx: number;
  vy: number;
}

/** Steps of third order on a nearly straight line: mostly one reaches rounding, the cap is never met. */
const MAX_ROUNDS = 40;
/** A step of m this small leaves an error of its cube: below rounding. */
const LAST_STEP = 3e-6;
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
  const size0 = length(wx, wy);
  const durationS = (drag * size0 + push * along0) / ((drag - push) * (drag + push));
  const m0 =
    Math.abs(across0) <= ALIGNED * size0 ? Number.NaN : -Math.asinh(along0 / Math.abs(across0));
  const logWeight0 = logWeight(m0, push / drag);
  return { along0, across0, drag, push, pushX, pushY, size0, m0, logWeight0, durationS };
}

/** ln(cosh m − ratio·sinh m), safe for large |m|. */
function logWeight(m: number, ratio: number): number {
  return Math.abs(m) + logWeightShare(Math.exp(-2 * Math.abs(m)), m < 0 ? -ratio : ratio);
}

/** The same less |m|, from e^(−2|m|) and a ratio of the sign of m. */
function logWeightShare(square: number, ratio: number): number {
  return Math.log((1 - ratio + (1 + ratio) * square) / 2);
}

/**
 * Adds a share of the velocity w, and of the displacement since the start, to what moves.
 *
 * @param timeS from 0 to the drag's duration
 */
export function addDragged(
  motion: CoulombDrag,
  share: number,
  timeS: number,
  moving: Dragged,
): void {
  const left = 1 - timeS / motion.durationS;
  if (!(left > 0)) addMoved(motion, share, 0, 0, moving);
  else if (Number.isNaN(motion.m0)) addMoved(motion, share, motion.along0 * left, 0, moving);
  else addTurned(motion, share, left, moving);
}

/** @param left share of a|w| + b·w that is still there, above 0 */
function addTurned(motion: CoulombDrag, share: number, left: number, moving: Dragged): void {
  const { along0, across0, drag, push, size0, m0, logWeight0, durationS } = motion;
  const ratio = push / drag;
  const logLeft = Math.log(left);
  const straight = 1 - ratio * ratio;
  // The first step, from the start, where the excess is −ln(left).
  let tanh = -along0 / size0;
  let sech2 = 1 - tanh * tanh;
  let fall = -curvedStep(-logLeft, tanh, sech2, ratio, straight);
  let sech = 0;
  let bend = 0;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const m = m0 + ratio * fall;
    const root = Math.exp(-Math.abs(m));
    const square = root * root;
    tanh = (m < 0 ? square - 1 : 1 - square) / (1 + square);
    sech = (2 * root) / (1 + square);
    sech2 = sech * sech;
    const weight = Math.abs(m) + logWeightShare(square, m < 0 ? -ratio : ratio);
    const step = curvedStep(fall + weight - logLeft - logWeight0, tanh, sech2, ratio, straight);
    fall -= step;
    bend = ratio * step;
    if (Math.abs(bend) <= LAST_STEP) break;
  }
  // From m alone: w⊥ itself may by now be too small for a double, while w∥ is not. The last step,
  // −bend, is added in second order.
  const tanhNow = tanh - bend * sech2 * (1 + bend * tanh);
  const sechNow = sech * (1 + bend * tanh + (bend * bend * (tanh * tanh - sech2)) / 2);
  const size = (left * durationS * (drag - push) * (drag + push)) / (drag - push * tanhNow);
  addMoved(motion, share, -size * tanhNow, Math.sign(across0) * size * sechNow, moving);
}

/** A step towards where the excess is none, by its slope and by how that bends (Chebyshev). */
function curvedStep(
  excess: number,
  tanh: number,
  sech2: number,
  ratio: number,
  straight: number,
): number {
  const slope = straight / (1 - ratio * tanh);
  const step = excess / slope;
  const bending = (ratio * ratio * sech2) / (1 - ratio * tanh);
  return step * (1 + (bending * step) / 2);
}

/** From the velocity now, along and across the push. */
function addMoved(
  motion: CoulombDrag,
  share: number,
  along: number,
  across: number,
  moving: Dragged,
): void {
  const { along0, across0, drag: a, push: b, pushX, pushY, size0 } = motion;
  const size = Math.sqrt(along * along + across * across);
  const square = size * size - size0 * size0;
  const sizeAlong = size * along - size0 * along0;
  const alongAlong = along * along - along0 * along0;
  const sizeAcross = size * across - size0 * across0;
  const acrossAlong = across * along - across0 * along0;
  const forward = -(2 * a * sizeAlong + b * (square + alongAlong)) / (4 * (a - b) * (a + b));
  const sideways = -(2 * a * sizeAcross + b * acrossAlong) / ((2 * a - b) * (2 * a + b));
  moving.xM += share * (forward * pushX - sideways * pushY);
  moving.yM += share * (forward * pushY + sideways * pushX);
  moving.vx += share * (along * pushX - across * pushY);
  moving.vy += share * (along * pushY + across * pushX);
}
