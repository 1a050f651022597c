import { describe, expect, it } from 'vitest';
import { predictPivot } from '../../../../../src/engine/fit/trials/pivot';
import { DEFAULT_KIT, type Kit } from '../../../../../src/engine/kit/kit';
import type { Stroke } from '../../../../../src/engine/stroke/stroke';
import { setup, stroke } from '../trial-cases';

const bridge = (kit: Kit, given: Partial<Stroke>, distanceM = 1) =>
  predictPivot(kit, stroke(given), setup({ distanceM }))?.bridgeM ?? null;

/**
 * The cue turns by the squirt angle about the bridge, which shifts its axis by (b + R) sin α: plane
 * geometry, with tan α = (5/2)β√(1−β²) / (1 + m/m_e + (5/2)(1−β²)) (Shepard 2001; Cross 2008).
 */
function naturalBridge(side: number, massRatio: number): number {
  const depth2 = 1 - side * side;
  const squirt = Math.atan((2.5 * side * Math.sqrt(depth2)) / (1 + massRatio + 2.5 * depth2));
  return (side * (0.028575 + 0.0095)) / Math.sin(squirt) - 0.028575;
}

describe('the bridge to pivot about', () => {
  it.each([
    [0.2, 22],
    [0.4, 20],
    [0.45, 40],
  ])('of a level cue is where squirt is undone: side %d, m/m_e %d', (side, massRatio) => {
    const kit = { ...DEFAULT_KIT, massRatio };
    expect(bridge(kit, { side })).toBeCloseTo(naturalBridge(side, massRatio), 7);
    expect(bridge(kit, { side: -side })).toBeCloseTo(naturalBridge(side, massRatio), 7);
  });

  it('of a level cue is the same for any mark and speed', () => {
    expect(bridge(DEFAULT_KIT, { side: 0.3, speedMps: 4 }, 2)).toBeCloseTo(
      bridge(DEFAULT_KIT, { side: 0.3, speedMps: 1 }, 0.5) ?? Number.NaN,
      7,
    );
  });

  it('of a raised cue is longer, for swerve undoes some of the squirt', () => {
    const [level, raised] = [0, 0.05].map((elevationRad) =>
      bridge(DEFAULT_KIT, { side: 0.3, elevationRad, speedMps: 2.5 }),
    );
    expect(raised).toBeGreaterThan(level ?? Number.NaN);
  });

  it('is none where swerve outdoes squirt, where nothing is to be undone, or nothing gets there', () => {
    expect(bridge(DEFAULT_KIT, { side: 0.3, elevationRad: 0.5, speedMps: 1 })).toBeNull();
    expect(bridge(DEFAULT_KIT, { side: 0 })).toBeNull();
    expect(bridge(DEFAULT_KIT, { side: 0.3, speedMps: 0.2 }, 3)).toBeNull();
  });
});
