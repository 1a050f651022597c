import { describe, expect, it } from 'vitest';
import { axisShift, pivotBridge } from '../../src/engine/direct/pivot-bridge';
import { squirtAngle, strike } from '../../src/engine/impacts/strike';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';

describe('squirt', () => {
  it('turns the ball away from the contact, up and down as well as sideways', () => {
    const level = { aimRad: 0, elevationRad: 0, speedMps: 3 };
    expect(strike({ ...level, side: 0.4, height: 0 }, DEFAULT_KIT).vx).toBeLessThan(0);
    expect(strike({ ...level, side: 0, height: 0.4 }, DEFAULT_KIT).vz).toBeLessThan(0);
    // Source: worked example of the same law, 3 m/s half a radius low: 0.13 m/s upward. Exact.
    expect(strike({ ...level, side: 0, height: -0.5 }, DEFAULT_KIT).vz).toBeCloseTo(0.13, 2);
  });

  it('leaves the tip at the stated horizontal speed, however the cue is held', () => {
    for (const elevationRad of [0, 0.2, 0.7, 1.2]) {
      const stroke = { aimRad: 0.3, side: 0.3, height: -0.2, elevationRad, speedMps: 2 };
      const ball = strike(stroke, DEFAULT_KIT);
      expect(Math.hypot(ball.vx, ball.vy)).toBeCloseTo(2, 12);
    }
  });
});

describe('the natural pivot length', () => {
  it('is (1 + r_tip/R)(2R/5)(7/2 + m/m_e) from the centre for small contacts', () => {
    // Source: the strike law for small offsets, tip dome included. Exact in the limit.
    const { ballRadiusM: R, tipRadiusM, massRatio } = DEFAULT_KIT;
    const side = 1e-5;
    const aim = squirtAngle(side, massRatio);
    const bridge = pivotBridge(aim, axisShift(side, R, tipRadiusM), R);
    const natural = (1 + tipRadiusM / R) * ((2 * R) / 5) * (3.5 + massRatio);
    expect((bridge ?? 0) + R).toBeCloseTo(natural, 8);
  });
});
