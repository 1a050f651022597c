import type { BallState } from '../../src/engine/ball/ball-state';
import { STANDARD_GRAVITY as g } from '../../src/engine/ball/gravity';
import type { Kit } from '../../src/engine/kit/kit';

/** A usual step for games and sketches, s. */
const STEP_S = 1e-4;

/**
 * The yardstick for paths: a ball slid and rolled over a level bed in small steps until it has gone
 * `distanceM` along y or rests. No hops, no touch: less than the engine does.
 */
export function steppedPath(start: BallState, distanceM: number, kit: Kit): number {
  const R = kit.ballRadiusM;
  let { xM, yM, vx, vy, wx, wy } = start;
  while (yM < distanceM) {
    const ux = vx - R * wy;
    const uy = vy + R * wx;
    const slip = Math.hypot(ux, uy);
    const change = Math.min(kit.slideFriction * g * STEP_S, (2 / 7) * slip);
    if (slip > 1e-9) {
      vx -= (change * ux) / slip;
      vy -= (change * uy) / slip;
      wx -= (2.5 * change * uy) / slip / R;
      wy += (2.5 * change * ux) / slip / R;
    } else {
      const speed = Math.hypot(vx, vy);
      const keep = 1 - (kit.rollFriction * g * STEP_S) / speed;
      if (!(keep > 0)) break;
      vx *= keep;
      vy *= keep;
      [wx, wy] = [-vy / R, vx / R];
    }
    xM += vx * STEP_S;
    yM += vy * STEP_S;
  }
  return xM;
}
