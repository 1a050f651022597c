import type { Cushion } from '../kit/kit';

/** What is left of a lively cushion's restitution however hard it is met: see `restitutionAt`. */
const LEAST_RESTITUTION = 0.58;

/**
 * Restitution of a cushion that is met at a speed: e(v) = e₀ − s·(v − v₀) above v₀, e₀ below.
 *
 * It stays above 0.58, and above where a harder ball would come back slower: (e₀ + s·v₀)/2, which on
 * an ordinary cushion is 0.575. A cushion deader than that is as dead at any speed. Source: matched to
 * Mathavan, Jackson and Parkin, Am. J. Phys. 77:788 (2009), as it is quoted by others (second-hand).
 *
 * @param squareMps level speed of the ball at first touch, square to the rail, m/s
 */
export function restitutionAt(cushion: Cushion, squareMps: number): number {
  const { restitution, lossPerMps, lossFromMps } = cushion;
  const lost = restitution - lossPerMps * Math.max(0, squareMps - lossFromMps);
  const turning = (restitution + lossPerMps * lossFromMps) / 2;
  return Math.max(lost, Math.min(restitution, Math.max(LEAST_RESTITUTION, turning)));
}
