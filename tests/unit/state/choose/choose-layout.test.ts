import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import type { SavedPosition } from '../../../../src/store/saved-position';
import type { StorePort } from '../../../../src/store/store-port';
import { CUT, NINE_FOOT, openChoose } from './open-choose';

const WIDTH_M = 2 * DEFAULT_KIT.ballRadiusM;

describe('laying balls', () => {
  it('puts one down, moves it, and keeps each change at once and in order', async () => {
    const put: number[] = [];
    const store: Partial<StorePort> = {
      async put(_list, row) {
        const { balls } = row as SavedPosition;
        await new Promise((resolve) => setTimeout(resolve, put.length === 0 ? 5 : 0));
        put.push(balls.find(({ name }) => name === 5)?.xM ?? Number.NaN);
        return { ok: true };
      },
    };
    const { model } = await openChoose({ store });
    expect(model.ballAt(5)).toBeNull();
    expect(model.place(5, 0.1, 0.2, false)).toEqual({ ok: true });
    model.place(5, 0.15, 0.2, false);
    model.nudge(5, 0.01, -0.02);
    expect(model.ballAt(5)).toMatchObject({ name: 5 });
    expect(model.ballAt(5)?.xM).toBeCloseTo(0.16, 12);
    expect(model.ballAt(5)?.yM).toBeCloseTo(0.18, 12);
    await model.flush();
    expect(put.map((xM) => Number(xM.toFixed(3)))).toEqual([0.1, 0.15, 0.16]);
  });

  it('snaps to the middle of the bed where it is near, if it is to snap', async () => {
    const { model } = await openChoose();
    model.place(5, 0.02, -0.02, true);
    expect(model.ballAt(5)).toEqual({ name: 5, xM: 0, yM: 0 });
    model.place(5, 0.02, -0.02, false);
    expect(model.ballAt(5)).toEqual({ name: 5, xM: 0.02, yM: -0.02 });
  });

  it('keeps a ball out of others and on the bed', async () => {
    const { model } = await openChoose();
    model.drag(5, 0.25, 0.59);
    model.endDrag();
    const [five, three] = [model.ballAt(5), model.ballAt(3)];
    if (!five || !three) throw new Error('both lie on the table');
    expect(Math.hypot(five.xM - three.xM, five.yM - three.yM)).toBeCloseTo(WIDTH_M, 6);
    model.place(5, 3, 0.3, false);
    expect(model.ballAt(5)?.xM).toBeLessThan(1.27 / 2);
    expect(model.place(5, Number.NaN, 0, false)).toMatchObject({ ok: false });
    expect(model.problem.value).toMatch(/no room/);
    model.place(5, 0, 0, false);
    expect(model.problem.value).toBeNull();
  });

  it('freezes a ball to the nearest one', async () => {
    const { model } = await openChoose();
    model.place(5, 0.25, 0.5, false);
    expect(model.freeze(5)).toEqual({ ok: true });
    const [five, three] = [model.ballAt(5), model.ballAt(3)];
    if (!five || !three) throw new Error('both lie on the table');
    expect(Math.hypot(five.xM - three.xM, five.yM - three.yM)).toBeCloseTo(WIDTH_M, 9);
    expect(model.freeze(9)).toMatchObject({ ok: false });
  });

  it('takes a ball off, and with it the wish to play it', async () => {
    const { model } = await openChoose();
    expect(model.takeOff(3)).toEqual({ ok: true });
    expect(model.ballAt(3)).toBeNull();
    expect(model.open.value.goal).toMatchObject({ ball: null, pocket: 'far-right' });
    expect(model.shot.value).toBeNull();
    expect(model.takeOff(3)).toMatchObject({ ok: false });
    model.undo();
    expect(model.open.value.goal).toEqual(CUT.goal);
  });

  it('makes an invented position the person’s own, a new name alone does not', async () => {
    const { model } = await openChoose();
    model.rename('cut', 'Mine');
    expect(model.open.value.origin).toBe('invented');
    model.nudge('cue', 0.01, 0);
    expect(model.open.value.origin).toBe('by-hand');
  });
});

describe('what the position makes', () => {
  it('is the shot by hand geometry: a ball straight into a corner', async () => {
    const { model } = await openChoose();
    model.playInto('far-right');
    const { shot } = model;
    if (!shot.value?.ok) throw new Error('there is a shot');
    const { ghost, distanceM } = shot.value;
    expect(Math.hypot(ghost.xM - 0.25, ghost.yM - 0.6)).toBeCloseTo(WIDTH_M, 9);
    expect(distanceM).toBeCloseTo(Math.hypot(ghost.xM + 0.2, ghost.yM + 0.6), 9);
    // The ball lies short of the corner and to its left: it is cut to the right.
    expect(shot.value.cutRad).toBeGreaterThan(0);
  });

  it('leaves the last shot while there is none, but not into another position', async () => {
    const { model } = await openChoose();
    const before = model.shot.value;
    // Nobody has asked for it until there is none.
    model.playBall(null);
    expect(model.shot.value).toBeNull();
    expect(model.lastShot.value).toEqual(before);
    model.add();
    expect(model.lastShot.value).toBeNull();
  });

  it('keeps the pocket as it is while the cue ball is dragged, and looks anew once a ball is let go', async () => {
    const { model } = await openChoose();
    const target = () => (model.shot.value?.ok ? model.shot.value.target : null);
    const before = target();
    expect(before).not.toBeNull();
    model.drag('cue', 0.1, -0.6);
    expect(target()).toEqual(before);
    model.drag(3, 0.1, 0.4);
    const underHand = target();
    // Clear of the cushions' points alone, a ball has less room than one that may touch them.
    model.endDrag();
    expect(underHand?.mouthM).toBeLessThan(target()?.mouthM ?? 0);
  });

  it('tells why there is no shot', async () => {
    const { model } = await openChoose();
    model.takeOff('cue');
    expect(model.shot.value).toMatchObject({ ok: false, reason: 'no-cue-ball' });
  });

  it('holds a zone to the bed, and takes none that is not told', async () => {
    const { model } = await openChoose();
    model.markZone({ xM: 9, yM: -9, radiusM: 0 });
    expect(model.open.value.zone).toEqual({ xM: 0.635, yM: -1.27, radiusM: 0.03 });
    model.markZone({ xM: Number.NaN, yM: 0, radiusM: 0.2 });
    expect(model.open.value.zone?.xM).toBe(0.635);
    model.markZone(null);
    expect(model.open.value.zone).toBeNull();
  });
});

describe('on another table', () => {
  const SHORT = { ...NINE_FOOT, id: 'short', lengthM: 1.27, widthM: 0.635 };

  it('lies scaled, and is kept as it lies there once it is changed', async () => {
    const { model, table, stored } = await openChoose();
    model.markZone({ xM: 0.2, yM: 0.4, radiusM: 0.2 });
    table.value = SHORT;
    expect(model.shape.value).toMatchObject({ lengthM: 1.27, widthM: 0.635 });
    expect(model.ballAt('cue')).toEqual({ name: 'cue', xM: -0.1, yM: -0.3 });
    expect(model.open.value.zone).toEqual({ xM: 0.1, yM: 0.2, radiusM: 0.1 });
    await model.flush();
    expect((await stored())[0]).toMatchObject({ lengthM: 2.54 });
    model.nudge('cue', 0.01, 0);
    await model.flush();
    const [kept] = await stored();
    expect(kept).toMatchObject({ lengthM: 1.27, balls: [{ yM: -0.3 }, {}, {}] });
    expect(kept?.balls[0]?.xM).toBeCloseTo(-0.09, 12);
    model.undo();
    table.value = NINE_FOOT;
    expect(model.ballAt('cue')).toEqual({ name: 'cue', xM: -0.2, yM: -0.6 });
  });

  it('keeps balls apart that would lie in one another there', async () => {
    const near = { ...CUT, balls: [...CUT.balls, { name: 9, xM: 0.25, yM: 0.66 }] };
    const { model, table } = await openChoose({ positions: [near] });
    table.value = SHORT;
    const [three, nine] = [model.ballAt(3), model.ballAt(9)];
    if (!three || !nine) throw new Error('both lie on the table');
    expect(three).toMatchObject({ xM: 0.125, yM: 0.3 });
    expect(Math.hypot(nine.xM - three.xM, nine.yM - three.yM)).toBeCloseTo(WIDTH_M, 6);
  });

  it('stands on the smallest table that takes such pockets where the record tells of a toy', async () => {
    const { model } = await openChoose({ table: { ...NINE_FOOT, lengthM: 0.8, widthM: 0.4 } });
    expect(model.shape.value).toMatchObject({ lengthM: 1, widthM: 0.5 });
    expect(model.shot.value).not.toBeNull();
  });
});
