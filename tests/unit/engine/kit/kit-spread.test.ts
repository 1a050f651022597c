import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { findKitProblem } from '../../../../src/engine/kit/kit-numbers';
import { KIT_QUANTITIES, kitMoved, UNMEASURED } from '../../../../src/engine/kit/kit-spread';

describe('a kit moved by what is not known of it', () => {
  it.each(KIT_QUANTITIES)('%s changes, and nothing else does', (quantity) => {
    const moved = kitMoved(DEFAULT_KIT, UNMEASURED, quantity, 1);
    const group = /^(bedSlope|cushion)/.exec(quantity)?.[0];
    const field = group ?? quantity;
    const changed = Object.keys(DEFAULT_KIT).filter(
      (key) => Reflect.get(moved, key) !== Reflect.get(DEFAULT_KIT, key),
    );
    expect(changed).toEqual([field]);
    if (field !== group) return;
    const [was, is] = [DEFAULT_KIT, moved].map((kit) => Object.values(kit[group as 'cushion']));
    expect(is?.filter((value, index) => value !== was?.[index])).toHaveLength(1);
  });

  it('counts a restitution by what it lacks: never all, and up with more', () => {
    const moved = (sds: number) =>
      kitMoved(DEFAULT_KIT, UNMEASURED, 'cushionRestitution', sds).cushion.restitution;
    expect([-1, 0, 1].map(moved)).toEqual([
      expect.closeTo(1 - 0.02 * Math.E, 12),
      0.98,
      expect.closeTo(1 - 0.02 / Math.E, 12),
    ]);
    expect(moved(20)).toBeLessThan(1);
  });

  it('leaves a cushion’s restitution as wide open as 0.04', () => {
    const sds = Array.from({ length: 801 }, (_, index) => (index - 400) / 100);
    const weights = sds.map((sd) => Math.exp(-(sd * sd) / 2));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const mean = (of: (value: number) => number) =>
      sds.reduce((sum, sd, index) => {
        const { restitution } = kitMoved(DEFAULT_KIT, UNMEASURED, 'cushionRestitution', sd).cushion;
        return sum + (of(restitution) * (weights[index] ?? 0)) / total;
      }, 0);
    const middle = mean((e) => e);
    expect(Math.sqrt(mean((e) => (e - middle) ** 2))).toBeGreaterThan(0.04);
  });

  it('stays what the engine takes, however far it is moved', () => {
    for (const quantity of KIT_QUANTITIES) {
      for (const sds of [-40, -4, 4, 40]) {
        expect(findKitProblem(kitMoved(DEFAULT_KIT, UNMEASURED, quantity, sds))).toBeNull();
      }
    }
  });

  it('spans the stated range of m/m_e, 12 to 50, with its central 95 %', () => {
    const middle = { ...DEFAULT_KIT, massRatio: Math.sqrt(12 * 50) };
    expect(kitMoved(middle, UNMEASURED, 'massRatio', 1.96).massRatio).toBeCloseTo(50, 9);
    expect(kitMoved(middle, UNMEASURED, 'massRatio', -1.96).massRatio).toBeCloseTo(12, 9);
  });
});
