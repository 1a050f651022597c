import { describe, expect, it } from 'vitest';
import { clockHour, tipScale } from '../../../src/units/tip-unit';

const ON = { ballRadiusM: 0.028575, tipRadiusM: 0.0095 };

describe('a unit of tip contact', () => {
  it('counts the cue’s axis in tips of 13 mm', () => {
    // At half a radius the axis of a dome of 9.5 mm is (28.575 + 9.5) / 2 = 19.04 mm off.
    expect(tipScale('tips', ON).perRadius / 2).toBeCloseTo(19.0375 / 13, 9);
    expect(tipScale('radii', ON).perRadius).toBe(1);
  });

  it('marks contacts half a tip apart, or a quarter of a radius', () => {
    expect(tipScale('tips', ON).markedRadii).toBeCloseTo(6.5 / 38.075, 9);
    expect(tipScale('radii', ON).markedRadii).toBe(0.25);
  });

  it.each([
    [0, 0.3, '12'],
    [0.3, 0, '3'],
    [0, -0.3, '6'],
    [-0.3, 0, '9'],
    [0.3, -0.3, '4:30'],
    [-0.3, 0.3, '10:30'],
    [-0.001, 0.3, '12'],
  ])('side %f and height %f are at %s on the clock', (side, height, hour) => {
    expect(clockHour(side, height)).toBe(hour);
  });

  it('has no hour at the centre', () => {
    expect(clockHour(0, 0)).toBeNull();
  });
});
