import type { Kit } from '../../../src/engine/kit/kit';
import { type Body, struck, surfaceVelocity } from './body';
import { rubThrough } from './rub';

/**
 * A ball driven into the bed: restitution gives back a share of its downward speed, and the cloth's
 * friction acts through the whole normal impulse until the slip has stopped. A ball that is in the
 * air, or not going down, is left alone.
 *
 * @param restSpeedMps rebounds slower than this are not made: the bed only stops the ball
 */
export function bedBounce(body: Body, kit: Kit, restSpeedMps: number): Body {
  const [vx, vy, vz] = body.velocity;
  if (body.at[2] > 0 || vz >= restSpeedMps) return body;
  if (vz >= 0) return { ...body, velocity: [vx, vy, 0] };
  const rebound = -kit.bedRestitution * vz;
  const phases = rebound < restSpeedMps ? [-vz] : [-vz, rebound];
  const arm = [0, 0, -kit.ballRadiusM] as const;
  const [x, y] = surfaceVelocity(body, arm);
  // A solid ball's lowest point gives way 1 + 5/2 times as easily as its centre.
  const rub = { slip: [x, y, 0] as const, give: 3.5, coefficient: () => kit.slideFriction };
  const [fx, fy] = rubThrough(rub, phases, 1);
  const upwards = phases.reduce((sum, impulse) => sum + impulse, 0);
  const after = struck(body, arm, [fx, fy, upwards], kit.ballRadiusM);
  return phases.length > 1
    ? after
    : { ...after, velocity: [after.velocity[0], after.velocity[1], 0] };
}
