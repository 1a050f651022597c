import { restingAt } from '../engine/ball/ball-state';
import { afterCushion } from '../engine/impacts/cushion';
import type { Kit } from '../engine/kit/kit';
import { rolledVelocity } from '../engine/motion/rolled-velocity';

/** The speeds with which a ball that rolls squarely into a cushion leaves it, and rolls again, m/s; back is −. */
export function squareRebound(mps: number, kit: Kit) {
  const rolling = { ...restingAt(0, 0), vy: mps, wx: -mps / kit.ballRadiusM };
  const met = afterCushion(rolling, 0, 1, kit);
  return { leaves: met.vy, rolls: rolledVelocity(met, kit.ballRadiusM).vy };
}
