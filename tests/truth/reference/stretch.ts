import { Solver } from 'odex';
import { firstTouch } from './first-touch';
import type { Coordinates, ForceLaw } from './forces';
import { length, type Vec3 } from './vec3';

/** A time over which one force law holds. */
export interface Stretch {
  readonly law: ForceLaw;
  readonly start: Coordinates;
  readonly durationS: number;
  /** No force of this law is stronger, m/s². */
  readonly accelerationMps2: number;
}

/** A resting ball in the way. */
export interface Target {
  readonly at: Vec3;
  /** Sum of the radii, m. */
  readonly reachM: number;
}

export interface StretchEnd {
  readonly end: Coordinates;
  readonly elapsedS: number;
  readonly touched: boolean;
}

export type RunStretch = (stretch: Stretch, target: Target | null) => StretchEnd;

/** Most that speed inside a step exceeds its speed at both ends, relative. */
const BULGE = 0.01;

/**
 * Runs stretches with an ODE solver of the given tolerance (absolute in SI units, and relative):
 * to the end, or to where the ball first touches the target.
 */
export function stretchRunner(tolerance: number): RunStretch {
  const plain = newSolver(tolerance);
  const dense = newSolver(tolerance);
  dense.denseOutput = true;
  dense.denseComponents = [0, 1, 2];

  const advance = ({ law }: Stretch, start: Coordinates, durationS: number): Coordinates => {
    plain.initialStepSize = durationS;
    const { y, outcome } = plain.solve(law, 0, start, durationS);
    if (outcome !== 0 || !y.every(Number.isFinite)) throw new Error('the solver did not converge');
    return y;
  };

  return (stretch, target) => {
    const { start, durationS } = stretch;
    if (target === null || isOutOfReach(stretch, target)) {
      return { end: advance(stretch, start, durationS), elapsedS: durationS, touched: false };
    }
    let touchS: number | null = null;
    let stepStart = start;
    let stepStartS = 0;
    dense.initialStepSize = durationS;
    const { y } = dense.solve(stretch.law, 0, start, durationS, (_, fromS, toS, state, at) => {
      if (at === undefined) return true;
      touchS = firstTouch({
        gapAt: (timeS) => gap([at(0, timeS), at(1, timeS), at(2, timeS)], target),
        fromS,
        toS,
        speedMps: Math.max(speedOf(stepStart), speedOf(state)) * (1 + BULGE),
      });
      if (touchS !== null) return false;
      [stepStart, stepStartS] = [state, toS];
      return true;
    });
    if (touchS === null) return { end: y, elapsedS: durationS, touched: false };
    // From the start of its step, so that the dense output decides when, but not where.
    return {
      end: advance(stretch, stepStart, touchS - stepStartS),
      elapsedS: touchS,
      touched: true,
    };
  };
}

function newSolver(tolerance: number): Solver {
  const solver = new Solver(9);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  return solver;
}

function isOutOfReach({ start, durationS, accelerationMps2 }: Stretch, target: Target): boolean {
  const farthest = (speedOf(start) + accelerationMps2 * durationS) * durationS;
  return gap([start[0], start[1], start[2]], target) > farthest;
}

function gap([x, y, z]: Vec3, { at, reachM }: Target): number {
  return Math.hypot(x - at[0], y - at[1], z - at[2]) - reachM;
}

function speedOf([, , , vx, vy, vz]: Coordinates): number {
  return length([vx, vy, vz]);
}
