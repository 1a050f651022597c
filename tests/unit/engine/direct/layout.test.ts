import { describe, expect, it } from 'vitest';
import { layoutOf } from '../../../../src/engine/direct/layout';
import type { Shot } from '../../../../src/engine/direct/shot';
import { between, seededRandom } from '../../../harness/seeded-random';

const PLAIN: Shot = { distanceM: 1, cutRad: 0, side: 0, height: 0, elevationRad: 0, speedMps: 1 };

// Source: the ghost ball touches the object ball on the far side of the target line. Exact.
describe('layoutOf', () => {
  it('puts the object ball a ball’s width from the ghost ball, along the target line', () => {
    const random = seededRandom(5);
    for (let count = 0; count < 300; count++) {
      const cutRad = between(random, -Math.PI / 2, Math.PI / 2);
      const distanceM = between(random, 0.005, 4.1);
      const radiusM = between(random, 0.02, 0.04);
      const layout = layoutOf({ ...PLAIN, cutRad, distanceM }, radiusM);
      const [dx, dy] = [layout.objectXM, layout.objectYM - distanceM];
      expect(Math.hypot(dx, dy)).toBeCloseTo(2 * radiusM, 14);
      expect(Math.atan2(dx, dy)).toBeCloseTo(cutRad, 12);
      expect(layout.reachM).toBe(2 * radiusM);
      expect(layout.separationM).toBeGreaterThan(layout.reachM);
      expect(layout.separationM * Math.sin(layout.bearingRad)).toBeCloseTo(layout.objectXM, 14);
      expect(layout.separationM * Math.cos(layout.bearingRad)).toBeCloseTo(layout.objectYM, 14);
    }
  });

  it('lies straight ahead without a cut', () => {
    const layout = layoutOf(PLAIN, 0.03);
    expect(layout).toMatchObject({ objectXM: 0, objectYM: 1.06, bearingRad: 0 });
  });
});
