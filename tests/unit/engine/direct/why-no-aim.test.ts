import { describe, expect, it } from 'vitest';
import type { RefusalReason, Shot } from '../../../../src/engine/direct/shot';
import { solveAim } from '../../../../src/engine/direct/solve-aim';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';

const RAD = Math.PI / 180;

/** Distance m, cut °, side, height, elevation °, speed m/s. */
function shotOf(d: number, cut: number, side: number, height: number, up: number, v: number): Shot {
  return {
    distanceM: d,
    cutRad: cut * RAD,
    side,
    height,
    elevationRad: up * RAD,
    speedMps: v,
  };
}

const outcome = (shot: Shot) => {
  const result = solveAim(shot, DEFAULT_KIT);
  return result.ok ? 'answered' : result.reason;
};

// Each refusal, and the same shot with its remedy taken.
describe.each<[RefusalReason, Shot, readonly Partial<Shot>[]]>([
  ['stops-short', shotOf(2, -33, 0.2, -0.3, 19, 0.9), [{ speedMps: 1.8 }, { distanceM: 0.5 }]],
  ['stops-short', shotOf(0.55, 16, -0.2, 0.15, 11, 0.4), [{ speedMps: 0.6 }, { distanceM: 0.4 }]],
  // Rests against the object ball, all but touching: no contact there is one.
  ['stops-short', shotOf(0.0051, 68, -0.08, 0.32, 35, 0.043), [{ speedMps: 0.1 }]],
  ['flies-over', shotOf(1.7, -10, 0.05, 0, 53, 4.7), [{ elevationRad: 0.1 }, { speedMps: 1.5 }]],
  ['flies-over', shotOf(0.8, -27, 0.3, 0, 63, 4.8), [{ elevationRad: 0.1 }, { speedMps: 1 }]],
  ['too-thin', shotOf(0.75, -85, 0.2, -0.15, 29, 2.4), [{ cutRad: -70 * RAD }]],
  ['too-thin', shotOf(0.4, -84, 0.35, 0.1, 9, 1.2), [{ cutRad: -65 * RAD }]],
  ['curves-away', shotOf(1.2, -73, 0.25, -0.4, 66, 2.6), [{ elevationRad: 0.2 }]],
  [
    'no-convergence',
    shotOf(0.25, 50, -0.35, -0.05, 36, 1.7),
    [{ speedMps: 1.5 }, { distanceM: 0.2 }],
  ],
])('%s', (reason, shot, remedies) => {
  it('is why the shot is refused', () => {
    expect(outcome(shot)).toBe(reason);
  });

  it.each(remedies)('is mended by %o', (remedy) => {
    expect(outcome({ ...shot, ...remedy })).toBe('answered');
  });
});
