import type { BallFriction } from '../kit/kit';

/**
 * Effective friction coefficient of a whole impact between two balls at the slip speed of first
 * touch (m/s): μ(u) = a + b·e^(−c·u). Source: the form fits Marlow 1995 (from memory).
 */
export function ballFrictionAt(friction: BallFriction, slipMps: number): number {
  return friction.a + friction.b * Math.exp(-friction.c * slipMps);
}
