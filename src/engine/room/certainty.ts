import type { Shot } from '../aim/shot';
import { solveAim } from '../aim/solve-aim';
import type { Kit } from '../model/kit';
import { KIT_QUANTITIES, type KitQuantity, type KitSpread, kitMoved } from './kit-spread';

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

/** Less than this, rad, is nothing: a ten-thousandth of a degree. */
const NOTHING = 1e-6;

/**
 * Spreads what is not known of the kit to the aim: each quantity is moved a standard deviation
 * either way and the aim solved again, and the halves of the differences added in squares, for the
 * quantities are taken as independent.
 *
 * @param aimRad the solved aim of the kit as it stands
 */
export function certaintyOf(shot: Shot, kit: Kit, aimRad: number, spread: KitSpread): Certainty {
  const contributions: Contribution[] = [];
  const unsolved: KitQuantity[] = [];
  for (const quantity of KIT_QUANTITIES) {
    if (spread[quantity] === 0) continue;
    const [less, more] = [-1, 1].map((sds) => aimOf(shot, kitMoved(kit, spread, quantity, sds)));
    if (less == null || more == null) unsolved.push(quantity);
    const aimSdRad = half(less ?? null, more ?? null, aimRad);
    if (aimSdRad > NOTHING) contributions.push({ quantity, aimSdRad });
  }
  contributions.sort((a, b) => b.aimSdRad - a.aimSdRad);
  const squares = contributions.map((share) => share.aimSdRad ** 2);
  return {
    aimSdRad: Math.sqrt(squares.reduce((sum, square) => sum + square, 0)),
    contributions,
    unsolved,
  };
}

function aimOf(shot: Shot, kit: Kit): number | null {
  const result = solveAim(shot, kit);
  return result.ok ? result.aimRad : null;
}

function half(less: number | null, more: number | null, aimRad: number): number {
  if (less !== null && more !== null) return Math.abs(more - less) / 2;
  const one = less ?? more;
  return one === null ? 0 : Math.abs(one - aimRad);
}
