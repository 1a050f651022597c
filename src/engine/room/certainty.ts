import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import {
  KIT_QUANTITIES,
  type KitCorrelation,
  type KitQuantity,
  type KitSpread,
  kitMoved,
} from '../kit/kit-spread';

import type { Stroke } from '../stroke/stroke';

/** One quantity's share in what is not known of the aim. */
export interface Contribution {
  readonly quantity: KitQuantity;
  /** Standard deviation of the aim that this quantity alone leaves, rad. */
  readonly aimSdRad: number;
}

/** How sure the aim is, given what is known of the kit. */
export interface Certainty {
  /** Standard deviation of the aim, rad. */
  readonly aimSdRad: number;
  /** The largest first; quantities that do not matter to this shot are left out. */
  readonly contributions: readonly Contribution[];
  /**
   * Quantities so little known that a standard deviation either way leaves no aim at all; their
   * share is then counted from the other way, or not at all.
   */
  readonly unsolved: readonly KitQuantity[];
}

/** Less than this, rad, is nothing to tell: less than a ten-thousandth of a degree. */
const NOTHING = 1e-6;

/**
 * Spreads what is not known of the kit to the aim: each quantity is moved a standard deviation
 * either way and the aim solved again, and the halves of the differences added in squares, or as
 * the quantities' errors go together.
 *
 * @param stroke with the solved aim of the kit as it stands
 * @param correlation left out: the quantities are independent
 */
export function certaintyOf(
  task: Pick<Task, 'aims' | 'quantities'>,
  kit: Kit,
  stroke: Stroke,
  spread: KitSpread,
  correlation?: KitCorrelation,
): Certainty {
  const unsolved: KitQuantity[] = [];
  const halves = KIT_QUANTITIES.map((quantity) => {
    if (spread[quantity] === 0 || !task.quantities.includes(quantity)) return 0;
    const [less, more] = [-1, 1].map(
      (sds) => task.aims(kitMoved(kit, spread, quantity, sds), stroke)[0],
    );
    if (less === undefined || more === undefined) unsolved.push(quantity);
    return half(less ?? null, more ?? null, stroke.aimRad);
  });
  const contributions = KIT_QUANTITIES.map((quantity, index) => ({
    quantity,
    aimSdRad: Math.abs(halves[index] ?? 0),
  })).filter(({ aimSdRad }) => aimSdRad > NOTHING);
  contributions.sort((a, b) => b.aimSdRad - a.aimSdRad);
  return { aimSdRad: Math.sqrt(variance(halves, correlation)), contributions, unsolved };
}

/** Σ hᵢ ρᵢⱼ hⱼ, which rounding may leave a trace below zero. */
function variance(halves: readonly number[], correlation: KitCorrelation | undefined): number {
  const squares = halves.map((h, i) =>
    halves.reduce((sum, k, j) => sum + h * k * (correlation?.[i]?.[j] ?? (i === j ? 1 : 0)), 0),
  );
  return Math.max(
    0,
    squares.reduce((sum, square) => sum + square, 0),
  );
}

/** Change of the aim for one standard deviation more. */
function half(less: number | null, more: number | null, aimRad: number): number {
  if (less !== null && more !== null) return (more - less) / 2;
  if (more !== null) return more - aimRad;
  return less === null ? 0 : aimRad - less;
}
