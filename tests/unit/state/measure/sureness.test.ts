import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import {
  KIT_QUANTITIES,
  type KitQuantity,
  UNMEASURED,
} from '../../../../src/engine/kit/kit-spread';
import { measuredShelves, surenessOf } from '../../../../src/state/measure/sureness';
import { createTapClock } from '../../../../src/state/measure/tap-clock';

const correlation = KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((__, j) => Number(i === j)));
const before = { kit: DEFAULT_KIT, spread: UNMEASURED, correlation };
const row = (name: KitQuantity, now = before) => {
  const found = surenessOf(before, now).find(({ quantity }) => quantity === name);
  if (!found) throw new Error(`there is no ${name}`);
  return found;
};

describe('what is known of a kit', () => {
  it('tells the cue by its squirt in degrees at half a radius of side', () => {
    // tan α = 2.5·½·√¾ / (1 + 22 + 2.5·¾), by hand: 2.49°.
    expect(row('massRatio').before.value).toBeCloseTo(2.49, 2);
  });

  it('tells the spread of the squirt by where it lies a deviation either way', () => {
    // Mass ratios 22·e^±0.364, by hand: 3.41° and 1.80°, half their difference 0.81°.
    expect(row('massRatio').before.sd).toBeCloseTo(0.81, 2);
  });

  it('tells friction and its share as a coefficient and its deviation', () => {
    const { value, sd } = row('slideFriction').before;
    expect(value).toBe(0.2);
    expect(sd / value).toBeCloseTo(Math.log(0.4 / 0.15) / (2 * 1.96), 12);
  });

  it('tells a slope as it is', () => {
    const kit = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0.0005, rightM_per_M: 0 } };
    expect(row('bedSlopeAlong', { ...before, kit }).now.value).toBe(0.0005);
  });

  it('counts as measured what is known by a tenth better than before', () => {
    const spread = { ...UNMEASURED, massRatio: UNMEASURED.massRatio * 0.85 };
    const now = { ...before, spread };
    expect(row('massRatio', now).isMeasured).toBe(true);
    expect(row('slideFriction', now).isMeasured).toBe(false);
  });
});

describe('the shelves that were measured', () => {
  it.each([
    ['massRatio', 'cues'],
    ['slideFriction', 'cloths'],
    ['rollFriction', 'cloths'],
    ['ballFriction', 'balls'],
    ['ballRestitution', 'balls'],
    ['bedSlopeRight', 'tables'],
  ] as const)('are those of which any figure is: by %s, %s', (quantity, shelf) => {
    const spread = { ...UNMEASURED, [quantity]: UNMEASURED[quantity] * 0.5 };
    expect(measuredShelves(before, { ...before, spread })).toEqual([shelf]);
  });

  it('are none before anything was read', () => {
    expect(measuredShelves(before, before)).toEqual([]);
  });
});

describe('a stopwatch on the screen', () => {
  it('takes the time between two taps, keeps it, and begins again when asked', () => {
    const clock = createTapClock();
    clock.tap(1000);
    clock.tap(2620);
    clock.tap(9000);
    expect(clock.timer.value).toEqual({ kind: 'stopped', seconds: 1.62 });
    clock.reset();
    expect(clock.timer.value).toEqual({ kind: 'idle' });
  });
});
