import { describe, expect, it } from 'vitest';
import { predictRun } from '../../../../../src/engine/fit/trials/speed';
import { DEFAULT_KIT } from '../../../../../src/engine/kit/kit';
import { G, runOf, setup, stroke } from '../trial-cases';

const TABLE = setup({ distanceM: 1.9, bedLengthM: 2.54 });
/** The cloth of the cushion's published figures. */
const KIT = { ...DEFAULT_KIT, slideFriction: 0.212 };

const runM = (speedMps: number) => predictRun(KIT, stroke({ speedMps }), TABLE)?.runM ?? Number.NaN;

describe('the run of a ball played up the table', () => {
  it('that touches no cushion is slide and roll: 12v²/49μ_s g + 25v²/98μ_r g', () => {
    for (const speed of [0.3, 0.5, 0.75]) expect(runM(speed)).toBeCloseTo(runOf(speed, KIT), 7);
  });

  it('counts the way to the cushion, and back with what the cushion leaves', () => {
    // The cushion model's own figures, nose at 0.635 of the diameter: a ball that rolls in squarely
    // keeps 0.958 of its speed, and 0.615 once it rolls again.
    const speed = 1.2;
    const beyondM = runOf(speed, KIT) - 1.9;
    const atCushion2 = 2 * 0.01 * G * beyondM;
    const slideM = (atCushion2 * (0.958 ** 2 - 0.615 ** 2)) / (2 * 0.212 * G);
    const rollM = (0.615 ** 2 * atCushion2) / (2 * 0.01 * G);
    expect(beyondM).toBeGreaterThan(0.5);
    expect(Math.abs(runM(speed) - (1.9 + slideM + rollM))).toBeLessThan(0.03 * (slideM + rollM));
  });

  it('grows with the speed, over any number of cushions', () => {
    let before = 0;
    for (let speed = 0.3; speed < 6; speed += 0.05) {
      const now = runM(speed);
      expect(now).toBeGreaterThan(before);
      before = now;
    }
    expect(before).toBeGreaterThan(3 * 2.54);
  });

  it('goes on from cushion to cushion, a ball’s width short of the length', () => {
    // Where a second cushion is just reached, a table longer by a millimetre ends the run there.
    const across = (bedLengthM: number) =>
      predictRun(KIT, stroke({ speedMps: 3 }), { ...TABLE, bedLengthM })?.runM ?? Number.NaN;
    const oneCushion = across(100);
    const acrossM = oneCushion - 1.9;
    expect(across(acrossM + 2 * KIT.ballRadiusM + 0.001)).toBeCloseTo(oneCushion, 9);
    expect(across(acrossM + 2 * KIT.ballRadiusM - 0.1)).not.toBeCloseTo(oneCushion, 2);
  });

  it('does not mind the aim: it is played straight', () => {
    const turned = predictRun(KIT, stroke({ aimRad: 0.01 }), TABLE);
    expect(turned).toEqual(predictRun(KIT, stroke(), TABLE));
  });
});
