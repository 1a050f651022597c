import { describe, expect, it } from 'vitest';
import { nearestSpeed } from '../../../../src/engine/aim/nearest-speed';
import type { Shot } from '../../../../src/engine/aim/shot';
import { solveAim } from '../../../../src/engine/aim/solve-aim';
import { DEFAULT_KIT } from '../../../../src/engine/model/kit';

const RAD = Math.PI / 180;
const FAR: Shot = {
  distanceM: 2.5,
  cutRad: 24 * RAD,
  side: 0,
  height: 0,
  elevationRad: 2 * RAD,
  speedMps: 0.3,
};

describe('the nearest speed with an aim', () => {
  it('is the least firmer one for a shot that stops short', () => {
    const speedMps = nearestSpeed(FAR, DEFAULT_KIT) ?? Number.NaN;
    expect(speedMps).toBeGreaterThan(0.3);
    expect(solveAim({ ...FAR, speedMps }, DEFAULT_KIT).ok).toBe(true);
    expect(solveAim({ ...FAR, speedMps: speedMps * 0.99 }, DEFAULT_KIT).ok).toBe(false);
  });

  it('is a softer one for a shot that flies over the object ball', () => {
    const jump = { ...FAR, distanceM: 0.3, elevationRad: 30 * RAD, speedMps: 7 };
    expect(solveAim(jump, DEFAULT_KIT)).toMatchObject({ reason: 'flies-over' });
    const speedMps = nearestSpeed(jump, DEFAULT_KIT) ?? Number.NaN;
    expect(speedMps).toBeLessThan(7);
    expect(solveAim({ ...jump, speedMps }, DEFAULT_KIT).ok).toBe(true);
  });

  it('is none for a cut that no speed makes', () => {
    expect(nearestSpeed({ ...FAR, cutRad: 90 * RAD }, DEFAULT_KIT)).toBeNull();
  });
});
