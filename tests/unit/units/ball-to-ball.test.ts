import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radOf } from '../../../src/units/angle-degrees';
import { ballToBallGapM, ghostBallDistanceM } from '../../../src/units/ball-to-ball';

const R = 0.028575;
/** Down to a billionth of a millimetre; smaller doubles have no digits to lose. */
const distance = fc.double({ min: 1e-12, max: 4, noNaN: true });
const cut = fc.double({ min: -90, max: 90, noNaN: true }).map(radOf);

function reach(result: ReturnType<typeof ballToBallGapM>): number {
  if (!result.ok) throw new Error(result.message);
  return result.value;
}

/** The distance between the balls' centres, from where the balls lie. */
function centresApart(distanceM: number, cutRad: number): number {
  const ghost = { x: 0, y: distanceM };
  const object = { x: ghost.x + 2 * R * Math.sin(cutRad), y: ghost.y + 2 * R * Math.cos(cutRad) };
  return Math.hypot(object.x, object.y);
}

describe('ball to ball and centre to ghost ball', () => {
  it('are the same on a straight shot', () => {
    expect(reach(ballToBallGapM(1.15, 0, R))).toBeCloseTo(1.15, 14);
    expect(reach(ghostBallDistanceM(1.15, 0, R))).toBeCloseTo(1.15, 14);
  });

  it('follow from where the balls lie', () => {
    fc.assert(
      fc.property(distance, cut, (distanceM, cutRad) => {
        const gapM = reach(ballToBallGapM(distanceM, cutRad, R));
        expect(gapM).toBeCloseTo(centresApart(distanceM, cutRad) - 2 * R, 13);
      }),
    );
  });

  it('come back the same, also when the balls nearly touch', () => {
    fc.assert(
      fc.property(distance, cut, (distanceM, cutRad) => {
        const gapM = reach(ballToBallGapM(distanceM, cutRad, R));
        const back = reach(ghostBallDistanceM(gapM, cutRad, R));
        expect(Math.abs(back - distanceM)).toBeLessThanOrEqual(1e-14 * distanceM);
      }),
    );
  });

  it('are both nothing when the balls touch at the ghost ball', () => {
    expect(reach(ballToBallGapM(0, radOf(30), R))).toBe(0);
    expect(reach(ghostBallDistanceM(0, radOf(30), R))).toBe(0);
  });

  it.each([-0.001, Number.NaN, Number.POSITIVE_INFINITY])('refuse a distance of %s', (lengthM) => {
    expect(ballToBallGapM(lengthM, 0, R)).toMatchObject({ ok: false, problem: 'out-of-domain' });
    expect(ghostBallDistanceM(lengthM, 0, R)).toMatchObject({ ok: false });
  });

  it.each([90.1, -90.1, 120, Number.NaN])('refuse a cut of %s°', (deg) => {
    expect(ballToBallGapM(1, radOf(deg), R)).toMatchObject({ ok: false });
    expect(ghostBallDistanceM(1, radOf(deg), R)).toMatchObject({ ok: false });
  });
});
