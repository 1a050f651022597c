import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squirtAngle } from '../../../src/engine/impacts/strike';
import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { FELT_FIGURES, type FeltSetting } from '../../../src/units/felt-figures';
import { cushionBounce } from '../../truth/reference/cushion-bounce';

const G = 9.80665;
const on = (kit: Partial<Kit>, others: Partial<FeltSetting> = {}): FeltSetting => ({
  kit: { ...DEFAULT_KIT, ...kit },
  tipDiameterM: 0.013,
  tableLengthM: 2.54,
  ...others,
});
const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('what a player sees of a cue', () => {
  // physics.md, checks: squirt in degrees at 0.1 and 0.3 radii, mass ratios of 20 and 30.
  it.each([
    [20, 0.1, 0.61],
    [20, 0.3, 1.76],
    [30, 0.1, 0.43],
    [30, 0.3, 1.23],
  ])(
    'is the published squirt over a table length, ratio %d at %d radii',
    (massRatio, side, deg) => {
      const { ballRadiusM, tipRadiusM } = DEFAULT_KIT;
      // Half a tip of this width touches so far out, the tip being domed.
      const tipDiameterM = 2 * side * (ballRadiusM + tipRadiusM);
      const metres = FELT_FIGURES.squirt(on({ massRatio }, { tipDiameterM }));
      expect((Math.atan(metres / 2.54) * 180) / Math.PI).toBeCloseTo(deg, 2);
    },
  );

  it('is the bridge about which turning to a little side takes as much back as the ball squirts', () => {
    fc.assert(
      fc.property(
        share(2, 200),
        share(0.004, 0.03),
        share(0.02, 0.04),
        (massRatio, tip, radius) => {
          const kit = { massRatio, tipRadiusM: tip, ballRadiusM: radius };
          const turnedRad = 1e-6;
          const shiftM = (FELT_FIGURES.pivot(on(kit)) + radius) * Math.sin(turnedRad);
          const squirted = squirtAngle(shiftM / (radius + tip), massRatio);
          expect(squirted / turnedRad).toBeCloseTo(1, 6);
        },
      ),
    );
  });
});

describe('what a player sees of a cloth', () => {
  it('is as far as a ball rolls while friction takes its speed away, in small steps', () => {
    for (const rollFriction of [0.006, 0.01, 0.02]) {
      const step = 1e-3;
      let [mps, metres] = [1.5, 0];
      while (mps > 0) {
        metres += mps * step - (rollFriction * G * step * step) / 2;
        mps -= rollFriction * G * step;
      }
      expect(FELT_FIGURES.run(on({ rollFriction }))).toBeCloseTo(metres, 2);
    }
  });

  it('is as far as a low ball slides before its spin has turned round, in small steps', () => {
    for (const slideFriction of [0.12, 0.2, 0.35]) {
      const [step, radius] = [1e-5, DEFAULT_KIT.ballRadiusM];
      // I ω = m v b: backspin of a hit half a radius low, I = (2/5) m R².
      let [mps, backRadS, metres] = [2.5, (2.5 * 2.5 * 0.5) / radius, 0];
      while (backRadS > 0) {
        metres += mps * step;
        mps -= slideFriction * G * step;
        backRadS -= ((5 * slideFriction * G) / (2 * radius)) * step;
      }
      expect(FELT_FIGURES.draw(on({ slideFriction }))).toBeCloseTo(metres, 3);
    }
  });
});

describe('what a player sees of balls', () => {
  it('is throw by the law of a sliding ball, never beyond what stops all slip', () => {
    // physics.md: tan = min(μ, (2/7) u_t / ((1+e) u_n)), the slip 0.75 of 0.75 m/s.
    fc.assert(
      fc.property(share(0, 0.5), share(0, 0.5), share(0.5, 1), (a, b, e) => {
        const ballFriction = { a, b, c: 1.088 };
        const mu = a + b * Math.exp(-1.088 * 0.75 * 0.75);
        const most = ((2 / 7) * 0.75) / ((1 + e) * Math.sqrt(1 - 0.75 ** 2));
        const told = FELT_FIGURES.throw(on({ ballFriction, ballRestitution: e }));
        expect(Math.tan(told)).toBeCloseTo(Math.min(mu, most), 10);
      }),
    );
  });
});

describe('what a player sees of a table', () => {
  it('is the speed that the reference’s cushion leaves a rolling ball to roll back with', () => {
    for (const restitution of [0.7, 0.9, 0.98]) {
      const cushion = { ...DEFAULT_KIT.cushion, restitution };
      const kit = { ...DEFAULT_KIT, cushion };
      const { ballRadiusM } = kit;
      const met = cushionBounce(
        { at: [0, 0, 0], velocity: [0, 1.5, 0], spin: [-1.5 / ballRadiusM, 0, 0] },
        [0, 1, 0],
        cushion,
        kit,
        20_000,
      );
      // What rolls of it once all slip is gone: 5/7 of the speed and 2/7 of the spin (Coriolis).
      const rolls = (5 * met.velocity[1] - 2 * ballRadiusM * met.spin[0]) / 7;
      expect(FELT_FIGURES.rebound(on({ cushion }))).toBeCloseTo(-rolls / 1.5, 3);
    }
  });
});
