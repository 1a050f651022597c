import { type BallState, type Pad, slipX, slipY } from '../ball/ball-state';
import { STANDARD_GRAVITY as g } from '../ball/gravity';
import { SLIP_TO_CENTRE, SPIN_SHARE } from '../ball/inertia';
import { leastHop } from '../impacts/bed-impulse';
import type { Kit } from '../kit/kit';
import { length } from '../numerics/length';

/** Longer chains than this are followed hop by hop. */
const MOST_HOPS = 200;

/**
 * Plays all hops to come of a ball that leaves the bed, up to the last one's landing, which the bed
 * has yet to answer.
 *
 * Upward speeds fall as e_bed to the power of the hop. While every landing rubs as hard as it can, the
 * slip keeps its direction on a level bed, so that speeds and places are sums of geometric series.
 * Source: those of `meetBed` and of flight, summed here; exact.
 *
 * @param ball on the bed, its upward speed one that is flown
 * @param clearM how far its centre may go, m
 * @returns how long they take, s; 0 where a sum does not tell, or they might go farther: the ball is
 *   as it was
 */
export function playHopChain(ball: Pad<BallState>, kit: Kit, clearM: number): number {
  const { bedRestitution: e, ballRadiusM, bedSlope } = kit;
  const { vx, vy, vz } = ball;
  if (bedSlope.alongM_per_M !== 0 || bedSlope.rightM_per_M !== 0) return 0;
  const leastShare = leastHop(kit) / vz;
  // By multiplying: quicker than a power and a logarithm.
  let lastShare = 1;
  let hops = 1;
  while (lastShare * e > leastShare && hops < MOST_HOPS) {
    lastShare *= e;
    hops++;
  }
  if (hops === MOST_HOPS) return 0;
  const allShare = lastShare * e;
  const ux = slipX(ball, ballRadiusM);
  const uy = slipY(ball, ballRadiusM);
  const slip = length(ux, uy);
  // All landings but the last, as impulses over the mass.
  const grip = (kit.slideFriction * (1 + e) * vz) / (1 - e);
  const taken = grip * (1 - lastShare);
  const sum = (1 - allShare) / (1 - e);
  const durationS = (2 * vz * sum) / g;
  const isRubbed = taken > 0 && taken <= SLIP_TO_CENTRE * slip;
  if (!isRubbed || !((length(vx, vy) + taken) * durationS < clearM)) return 0;
  const squares = (1 - allShare * allShare) / (1 - e * e);
  const heldM = (2 * vz * grip * (sum - squares)) / g / slip;
  ball.xM += vx * durationS - heldM * ux;
  ball.yM += vy * durationS - heldM * uy;
  ball.vx = vx - (taken / slip) * ux;
  ball.vy = vy - (taken / slip) * uy;
  ball.vz = -vz * lastShare;
  const spin = (SPIN_SHARE * taken) / slip / ballRadiusM;
  ball.wx -= spin * uy;
  ball.wy += spin * ux;
  return durationS;
}
