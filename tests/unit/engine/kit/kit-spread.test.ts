import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { findKitProblem } from '../../../../src/engine/kit/kit-numbers';
import { KIT_QUANTITIES, kitMoved, UNMEASURED } from '../../../../src/engine/kit/kit-spread';

describe('a kit moved by what is not known of it', () => {
  it.each(KIT_QUANTITIES)('%s changes, and nothing else does', (quantity) => {
    const moved = kitMoved(DEFAULT_KIT, UNMEASURED, quantity, 1);
    const field = quantity.startsWith('bedSlope') ? 'bedSlope' : quantity;
    const changed = Object.keys(DEFAULT_KIT).filter(
      (key) => Reflect.get(moved, key) !== Reflect.get(DEFAULT_KIT, key),
    );
    expect(changed).toEqual([field]);
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
