import { describe, expect, it } from 'vitest';
import type { Shot } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { directPot } from '../../../../src/engine/goal/direct-pot';
import type { Target } from '../../../../src/engine/goal/target';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { goesAsMeant, nearestSpeed } from '../../../../src/engine/room/nearest-speed';

const RAD = Math.PI / 180;
const CORNER: Target = { kind: 'mouth', distanceM: 0.8, mouthM: 0.116 };
const FAR: Shot = {
  distanceM: 2.5,
  cutRad: 24 * RAD,
  side: 0,
  height: 0,
  elevationRad: 2 * RAD,
  speedMps: 0.3,
};

const { ballRadiusM } = DEFAULT_KIT;
const nearest = (shot: Shot, target = CORNER) =>
  nearestSpeed(directPot(shot, target, ballRadiusM), DEFAULT_KIT, shot);
const goes = (shot: Shot) => goesAsMeant(directPot(shot, CORNER, ballRadiusM), DEFAULT_KIT, shot);

describe('the nearest speed at which the ball goes', () => {
  it('is the least firmer one for a shot that stops short', () => {
    const speedMps = nearest(FAR) ?? Number.NaN;
    expect(speedMps).toBeGreaterThan(0.3);
    expect(goes({ ...FAR, speedMps })).toBe(true);
    expect(goes({ ...FAR, speedMps: speedMps * 0.99 })).toBe(false);
  });

  it('gets the ball to its target, not only to the object ball', () => {
    const speedMps = nearest(FAR) ?? Number.NaN;
    const nearer: Target = { ...CORNER, distanceM: 0.1 };
    expect(speedMps).toBeGreaterThan(nearest(FAR, nearer) ?? Number.NaN);
  });

  it('is a softer one for a shot that flies over the object ball', () => {
    const jump = { ...FAR, distanceM: 0.3, elevationRad: 30 * RAD, speedMps: 7 };
    expect(solveAim(jump, DEFAULT_KIT)).toMatchObject({ reason: 'flies-over' });
    const speedMps = nearest(jump) ?? Number.NaN;
    expect(speedMps).toBeLessThan(7);
    expect(goes({ ...jump, speedMps })).toBe(true);
  });

  it.each([84, 86, 90])('is none for a cut of %d° to a pocket that no speed reaches', (cutDeg) => {
    expect(nearest({ ...FAR, cutRad: cutDeg * RAD })).toBeNull();
  });
});
