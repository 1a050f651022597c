import { describe, expect, it } from 'vitest';
import { axisShift, pivotBridge } from '../../../../src/engine/direct/pivot-bridge';

const R = 0.028575;

describe('pivotBridge', () => {
  it('turns a centre-ball address into both the aim and the shift', () => {
    for (const aim of [0.01, 0.03, -0.05, 0.3]) {
      const shiftM = Math.sign(aim) * 0.012;
      const bridgeM = pivotBridge(aim, shiftM, R);
      if (bridgeM === null) throw new Error('no bridge');
      // The hand lies b + R behind the ball's centre; the cue turned there by the aim points from
      // it along (sin, cos), and passes the centre at this distance to the right. Plane geometry.
      const hand = [0, -(bridgeM + R)] as const;
      const passes = hand[0] * Math.cos(aim) - hand[1] * Math.sin(aim);
      expect(passes).toBeCloseTo(shiftM, 14);
    }
  });

  it('is none without side: a straight stick cannot turn by pivoting to stay', () => {
    expect(pivotBridge(0.02, 0, R)).toBeNull();
    expect(pivotBridge(0, 0, R)).toBeNull();
  });

  it('is none where the aim turns the other way, or not at all', () => {
    expect(pivotBridge(-0.02, 0.01, R)).toBeNull();
    expect(pivotBridge(0, 0.01, R)).toBeNull();
  });

  it('is none behind the cue’s end or within the ball', () => {
    expect(pivotBridge(0.01, 0.0154, R)).toBeNull();
    expect(pivotBridge(0.01, 0.0152, R)).toBeCloseTo(0.0152 / Math.sin(0.01) - R, 14);
    expect(pivotBridge(0.8, 0.012, R)).toBeNull();
  });
});

describe('axisShift', () => {
  it('is the contact for a flat tip, and more for a domed one', () => {
    expect(axisShift(0.4, R, 0)).toBeCloseTo(0.4 * R, 15);
    expect(axisShift(-0.4, R, 0.0095)).toBeCloseTo(-0.4 * (R + 0.0095), 15);
  });
});
