import { describe, expect, it } from 'vitest';
import { tiltedAims } from '../../../../src/engine/direct/tilted-aims';

const missesAlways = () => ({ missRad: Number.NaN, aimPerMiss: Number.NaN });

describe('tiltedAims', () => {
  it('carries a root to the aim at which play goes', () => {
    const [aim] = tiltedAims(
      () => [0.02],
      (at) => ({ missRad: 12 * (at - 0.0235) + (at - 0.0235) ** 2, aimPerMiss: 0.05 }),
    );
    expect(aim).toBeCloseTo(0.0235, 10);
  });

  it('solves the paths instead where play misses the object ball', () => {
    // The aim that the path under an aim gives, and the one aim that gives itself.
    const gives = (under: number) => 0.05 + 0.3 * Math.sin(under);
    const [aim = Number.NaN] = tiltedAims((under) => [gives(under)], missesAlways);
    expect(gives(aim)).toBeCloseTo(aim, 9);
  });

  it('keeps to the nearest root where a path gives several', () => {
    const aims = tiltedAims((under) => [0.1 + 0.1 * under, -0.4 + 0.1 * under], missesAlways);
    expect(aims[0]).toBeCloseTo(0.1 / 0.9, 9);
    expect(aims[1]).toBeCloseTo(-0.4 / 0.9, 9);
  });

  it('tries other aims where the path straight ahead shows no contact', () => {
    for (const home of [0.11, -0.35, 0.62, -1.22]) {
      const near = (under: number) => (Math.abs(under - home) < 0.1 ? [home] : []);
      expect(tiltedAims(near, missesAlways)[0]).toBeCloseTo(home, 12);
    }
  });

  it('gives up on what never settles, after a bounded number of paths', () => {
    let paths = 0;
    const counted = (rootsUnder: (under: number) => readonly number[]) => (under: number) => {
      paths++;
      return rootsUnder(under);
    };
    const nowhere = counted(() => []);
    expect(tiltedAims(nowhere, missesAlways)).toEqual([]);
    expect(paths).toBeLessThan(100);
    paths = 0;
    // An aim that always lies a little further on, until the path loses the object ball.
    const fleeing = counted((under) =>
      paths % 6 === 0 ? [] : [under + 0.05 + 0.01 * (paths % 4)],
    );
    expect(tiltedAims(fleeing, missesAlways).every(Number.isFinite)).toBe(true);
    expect(paths).toBeGreaterThan(30);
    expect(paths).toBeLessThan(100);
  });
});
