import { describe, expect, it } from 'vitest';
import { strike } from '../../src/engine/impacts/strike';
import type { Kit } from '../../src/engine/kit/kit';
import { travel } from '../../src/engine/motion/journey';
import { NO_SQUIRT } from '../harness/idealised-kits';
import { between, seededRandom } from '../harness/seeded-random';

const RAD = Math.PI / 180;

/** Final rolling direction of a stroke at aim 0, degrees right of the cue's line. */
function rollsAt(side: number, height: number, elevationRad: number, speedMps: number, kit: Kit) {
  const ball = strike({ aimRad: 0, side, height, elevationRad, speedMps }, kit);
  const { phases } = travel(ball, 0, kit, []);
  const roll = phases.find((phase) => phase.motion === 'rolling');
  return Math.atan2(roll?.start.vx ?? Number.NaN, roll?.start.vy ?? Number.NaN) / RAD;
}

/** Contacts beyond the miscue limit are fine here: the strike law itself is what is checked. */
describe('the massé theorem, with no squirt', () => {
  // Source: Coriolis 1835 (theorem from memory, re-derived): the final direction is parallel to the
  // line from where the ball rests on the bed to where the cue's axis meets it. Exact.
  it('holds for 1,000 strokes whatever the cloth, the hops and the speed', () => {
    const random = seededRandom(1835);
    let worst = 0;
    for (let count = 0; count < 1000; count++) {
      const offset = between(random, 0, 0.5);
      const clock = between(random, 0, 2 * Math.PI);
      const [side, height] = [offset * Math.cos(clock), offset * Math.sin(clock)];
      const elevationRad = between(random, 1, 60) * RAD;
      const kit = {
        ...NO_SQUIRT,
        slideFriction: between(random, 0.1, 0.5),
        bedRestitution: between(random, 0, 0.8),
      };
      const expected = Math.atan2(side * Math.sin(elevationRad), Math.cos(elevationRad) + height);
      const direction = rollsAt(side, height, elevationRad, between(random, 0.5, 6), kit);
      worst = Math.max(worst, Math.abs(direction - expected / RAD));
    }
    expect(worst).toBeLessThan(1e-9);
  });

  it('takes a distance that grows as speed squared over friction to develop', () => {
    const curved = (speedMps: number, slideFriction: number) => {
      const kit = { ...NO_SQUIRT, slideFriction, bedRestitution: 0 };
      const stroke = { aimRad: 0, side: 0.4, height: 0, elevationRad: 20 * RAD, speedMps };
      const { phases } = travel(strike(stroke, kit), 0, kit, []);
      return phases.find((phase) => phase.motion === 'rolling')?.start.yM ?? Number.NaN;
    };
    expect(curved(4, 0.2) / curved(2, 0.2)).toBeCloseTo(4, 9);
  });
});
