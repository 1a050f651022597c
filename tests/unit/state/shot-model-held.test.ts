import { describe, expect, it } from 'vitest';
import type { Shot } from '../../../src/engine/direct/shot';
import { solveAim } from '../../../src/engine/direct/solve-aim';
import { directPot } from '../../../src/engine/goal/direct-pot';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { goesAsMeant, nearestSpeed } from '../../../src/engine/room/nearest-speed';
import { radOf } from '../../../src/units/angle-degrees';
import { openShot } from './open-shot';

describe('a held shot', () => {
  it('is set beside the present one, with the difference', () => {
    const { model } = openShot({ side: 0.1, distanceM: 1 });
    expect(model.comparison.value).toBeNull();
    model.hold();
    model.setTip(0.3, 0);
    const { result, change } = model.comparison.value ?? {};
    expect(result).toMatchObject({ ok: true, aimRad: 0.01 });
    expect(change?.offsetM).toBeCloseTo(0.02, 12);
    expect(change?.onObjectBallM).toBeCloseTo(0.02, 12);
  });

  it('changes places with the present one, and back', () => {
    const { model, desk } = openShot({ speedMps: 1 });
    model.hold();
    model.setFigure('speed', 2);
    model.swap();
    expect(model.shot.value.speedMps).toBe(1);
    expect(desk.heldShot.value?.speedMps).toBe(2);
    model.swap();
    expect(model.shot.value.speedMps).toBe(2);
  });

  it('comes back where it was when the exchange is taken back', () => {
    const { model, desk } = openShot({ speedMps: 1 });
    model.hold();
    model.setFigure('speed', 2);
    model.swap();
    model.undo();
    expect(model.shot.value.speedMps).toBe(2);
    expect(desk.heldShot.value?.speedMps).toBe(1);
  });

  it('has no difference to tell while either has no answer', () => {
    const { model } = openShot();
    model.hold();
    model.setFigure('speed', 0.05);
    expect(model.comparison.value?.change).toBeNull();
    expect(model.comparison.value?.result.ok).toBe(true);
  });

  it('can be let go', () => {
    const { model } = openShot();
    model.hold();
    model.release();
    expect(model.comparison.value).toBeNull();
    model.swap();
    expect(model.canUndo.value).toBe(false);
  });
});

describe('a refused shot', () => {
  it('is told the nearest speed at which it goes, rounded to one at which it still does', () => {
    const { model } = openShot();
    expect(model.remedySpeed.value).toBeNull();
    model.setFigure('speed', 0.05);
    expect(model.remedySpeed.value).toBe(0.2);
    model.setFigure('speed', model.remedySpeed.value ?? 0);
    expect(model.result.value.ok).toBe(true);
  });

  const ENGINE = { solve: solveAim, nearestSpeed, goes: goesAsMeant };
  it.each<Partial<Shot>>([
    { cutRad: radOf(89), side: 0, speedMps: 1.8 },
    { cutRad: radOf(86.5), side: 0, speedMps: 1 },
    { distanceM: 2, cutRad: radOf(70), speedMps: 0.3 },
    { distanceM: 2, cutRad: 0, side: 0, speedMps: 0.2 },
    { distanceM: 0.5, side: 0, elevationRad: radOf(35), speedMps: 4 },
  ])('is offered no speed but one at which the ball gets to the pocket: %o', (shot) => {
    const { model, desk } = openShot(shot, {}, ENGINE);
    expect(model.result.value.ok).toBe(false);
    const speed = model.remedySpeed.value;
    if (speed === null) return;
    model.setFigure('speed', speed);
    const target = { kind: 'mouth', ...desk.pocket.value } as const;
    const task = directPot(model.shot.value, target, DEFAULT_KIT.ballRadiusM);
    expect(goesAsMeant(task, DEFAULT_KIT, model.shot.value)).toBe(true);
  });
});
